//go:build geos

package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"

	"tipline/assets/samples"
)

// besideNothing measures `figures` of the sample beside the same program asked for its
// version, which it tells at once.
func besideNothing(p *page, program string) error {
	program, err := filepath.Abs(program)
	if err != nil {
		return err
	}
	data, err := samples.Read(samples.First)
	if err != nil {
		return err
	}
	folder, err := os.MkdirTemp("", "speed")
	if err != nil {
		return err
	}
	defer os.RemoveAll(folder)
	job := filepath.Join(folder, "job.tipline")
	if err := os.WriteFile(job, data, 0o600); err != nil {
		return err
	}
	if err := exec.Command(program, "figures", job).Run(); err != nil {
		return fmt.Errorf("%s figures: %w", program, err)
	}
	p.compare(row{what: "`tipline figures` on the sample", beside: "`tipline version`", goal: 2, note: "the whole program, started anew each time"},
		func() { _ = exec.Command(program, "figures", job).Run() }, func() { _ = exec.Command(program, "version").Run() })
	return nil
}

// besideBlank reads what app/measure-start.sh printed of the window on the sample, with
// a blank drawing, and empty.
func besideBlank(p *page, starts string) error {
	if starts == "" {
		return nil
	}
	data, err := os.ReadFile(starts)
	if err != nil {
		return err
	}
	took, memory := map[string]float64{}, map[string]float64{}
	for line := range strings.Lines(string(data)) {
		var which string
		var ms, mb float64
		if _, err := fmt.Sscanf(line, "%s %f ms %f MB", &which, &ms, &mb); err == nil {
			took[which], memory[which] = ms, mb
		}
	}
	if took["sample"]*took["blank"] == 0 {
		return fmt.Errorf("%s holds no starts", starts)
	}
	p.add(row{
		what: "start to first picture, the sample", beside: "the same widgets, blank drawing", goal: 1.15,
		ours: milliseconds(took["sample"]), theirs: milliseconds(took["blank"]), ratio: took["sample"] / took["blank"],
		note: fmt.Sprintf("an empty window %s", milliseconds(took["empty"])),
	})
	p.add(row{
		what: "memory at the first picture", beside: "the same widgets, blank drawing",
		ours: fmt.Sprintf("%.1f MB", memory["sample"]), theirs: fmt.Sprintf("%.1f MB", memory["blank"]), ratio: memory["sample"] / memory["blank"],
		note: fmt.Sprintf("an empty window %.1f MB", memory["empty"]),
	})
	return nil
}
