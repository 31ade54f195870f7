package command

import (
	"context"
	"encoding/json"
	"fmt"
	"path/filepath"

	"tipline/app/job"
	"tipline/app/solve"
)

// solved reads the job, works it out and looks for its photographs: beside the job, or in
// the present folder for one that comes in. When ctx is done it gives that up.
func (c *call) solved(ctx context.Context) (*solve.Result, error) {
	return unlessStopped(ctx, func() (*solve.Result, error) { return c.workOut(ctx) })
}

func (c *call) workOut(ctx context.Context) (*solve.Result, error) {
	j, err := c.load()
	if err != nil {
		return nil, err
	}
	r := solve.Solve(ctx, j)
	if r == nil {
		return nil, ctx.Err()
	}
	r.Findings = append(r.Findings, solve.PhotographFindings(j, func(file string) error {
		_, err := job.Picture(filepath.Dir(c.name), file)
		return err
	})...)
	return r, nil
}

// figuresCommand prints every computed figure.
func figuresCommand(c *call) (int, error) {
	r, err := c.solved(context.Background())
	if err != nil {
		return Nothing, err
	}
	figures := FiguresOf(r, c.words)
	if _, asked := c.flags["json"]; asked {
		out := json.NewEncoder(c.out)
		out.SetEscapeHTML(false)
		out.SetIndent("", "  ")
		return Done, out.Encode(figures)
	}
	p := printer{c.out, c.words, solve.Units(r.Job, c.words)}
	if err := p.figures(r, figures); err != nil {
		return Nothing, err
	}
	return Done, c.printFindings(figures.Findings)
}

// findingsCommand prints the findings alone and tells by its exit code whether an
// error is among them.
func findingsCommand(c *call) (int, error) {
	r, err := c.solved(context.Background())
	if err != nil {
		return Nothing, err
	}
	if len(r.Findings) == 0 {
		_, err := fmt.Fprintln(c.out, c.words.Say("command.no-findings"))
		return Done, err
	}
	return verdict(r.Findings), c.printFindings(findingsOf(r, c.words))
}

// verdict is Faulty when an error stands among the findings.
func verdict(findings []solve.Finding) int {
	if worst, _ := solve.Worst(findings); worst == solve.Error {
		return Faulty
	}
	return Done
}

// printFindings prints a finding a line: how bad, where, and the sentence.
func (c *call) printFindings(findings []Finding) error {
	for _, f := range findings {
		where := f.Wheel
		if where != "" && f.Field != "" {
			where += " "
		}
		where += f.Field
		if where != "" {
			where += ": "
		}
		if _, err := fmt.Fprintf(c.out, "%s: %s%s\n", c.words.Say("command.severity."+f.Severity), where, f.Text); err != nil {
			return err
		}
	}
	return nil
}
