package cutter

// RandomPointed lets the tests that need tooth, which imports this package, draw
// the same forms.
var RandomPointed = randomPointed
