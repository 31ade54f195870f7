package pdf

import (
	"fmt"

	"tipline/render"
)

// writeBookmarks writes the list by which a viewer leads to pages and returns its root,
// 0 where there is nothing to list (ISO 32000-1, 12.3.3, from memory).
func (b *book) writeBookmarks(marks []render.Bookmark) object {
	if marks = b.reached(marks); len(marks) == 0 {
		return 0
	}
	root := b.file.reserve()
	first, last := b.level(marks, root)
	b.file.begin(root)
	b.file.printf("<</Type/Outlines/First %d 0 R/Last %d 0 R/Count %d>>", first, last, len(marks))
	b.file.end()
	return root
}

// reached returns the bookmarks whose page is in the document.
func (b *book) reached(marks []render.Bookmark) (there []render.Bookmark) {
	for _, m := range marks {
		if m.Page >= 1 && m.Page <= len(b.written) {
			there = append(there, m)
		}
	}
	return there
}

// level writes bookmarks that stand beside each other, and closed below them their own.
func (b *book) level(marks []render.Bookmark, parent object) (first, last object) {
	objects := make([]object, len(marks))
	for i := range objects {
		objects[i] = b.file.reserve()
	}
	for i, m := range marks {
		beside := ""
		if i > 0 {
			beside += fmt.Sprintf("/Prev %d 0 R", objects[i-1])
		}
		if i+1 < len(marks) {
			beside += fmt.Sprintf("/Next %d 0 R", objects[i+1])
		}
		if under := b.reached(m.Under); len(under) > 0 {
			from, to := b.level(under, objects[i])
			beside += fmt.Sprintf("/First %d 0 R/Last %d 0 R/Count %d", from, to, -len(under))
		}
		b.file.begin(objects[i])
		b.file.printf("<</Title%s/Parent %d 0 R/Dest[%d 0 R/Fit]%s>>", text(m.Title), parent, b.written[m.Page-1], beside)
		b.file.end()
	}
	return objects[0], objects[len(objects)-1]
}
