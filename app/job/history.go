package job

import "tipline/geometry"

// History is every state a job has been in since it was opened, without limit;
// states share the parts that did not change.
type History struct {
	states []*Job
	now    int
	saved  *Job
	part   string            // of the field that typing runs in
	field  geometry.Quantity // empty when no run is going on
}

// NewHistory begins with a job that stands as it is saved.
func NewHistory(j *Job) *History { return &History{states: []*Job{j}, saved: j} }

// Job returns the present state.
func (h *History) Job() *Job { return h.states[h.now] }

// Do makes an edited job the present state; what was undone is forgotten. The
// same job again is no step.
func (h *History) Do(j *Job) {
	h.EndRun()
	h.push(j)
}

// Type is Do for a change of one field. Further changes of the same field are
// merged into one step until another edit, undoing, saving or EndRun.
func (h *History) Type(j *Job, part string, field geometry.Quantity) {
	running := h.field != "" && h.part == part && h.field == field
	if running && j != h.Job() {
		h.states[h.now] = j
		return
	}
	h.push(j)
	h.part, h.field = part, field
}

func (h *History) push(j *Job) {
	if j == h.Job() {
		return
	}
	h.states = append(h.states[:h.now+1:h.now+1], j)
	h.now++
}

// EndRun makes the next change of a field a step of its own, as when the field is
// left.
func (h *History) EndRun() { h.part, h.field = "", "" }

// CanUndo reports whether there is a state to go back to.
func (h *History) CanUndo() bool { return h.now > 0 }

// CanRedo reports whether there is an undone state to go forward to.
func (h *History) CanRedo() bool { return h.now+1 < len(h.states) }

// Undo goes one step back and returns the present state.
func (h *History) Undo() *Job { return h.Go(h.now - 1) }

// Redo goes one step forward and returns the present state.
func (h *History) Redo() *Job { return h.Go(h.now + 1) }

// Steps returns how many steps were taken since the job was opened, undone ones
// included, and how many of them stand.
func (h *History) Steps() (all, stand int) { return len(h.states) - 1, h.now }

// Step returns in what the job after step n, from 1, differs from the one before it.
func (h *History) Step(n int) []Change { return Changes(h.states[n-1], h.states[n]) }

// After returns the job as it was after n steps.
func (h *History) After(n int) *Job { return h.states[n] }

// Go undoes or redoes until n steps stand, as far as there are so many, and returns
// the present state.
func (h *History) Go(n int) *Job {
	h.EndRun()
	h.now = min(max(n, 0), len(h.states)-1)
	return h.Job()
}

// MarkSaved says that a state is what is on the disk.
func (h *History) MarkSaved(j *Job) {
	h.EndRun()
	h.saved = j
}

// Saved reports whether the present state is what is on the disk.
func (h *History) Saved() bool { return h.Job() == h.saved }
