package activity

import (
	_ "embed"
	"errors"
	"fmt"
	"regexp"
	"strings"

	"github.com/pelletier/go-toml/v2"

	"homebuild/internal/diag"
)

//go:embed targets.toml
var targetsFile []byte

// Targets are the targets that come with the program.
func Targets() ([]Target, error) {
	targets, problems := ParseTargets("targets.toml", targetsFile)
	if len(problems) > 0 {
		return nil, problems
	}
	return targets, nil
}

// written is a target as it stands in a file.
type written struct {
	ID          string   `toml:"id"`
	Can         string   `toml:"can"`
	About       string   `toml:"about"`
	Grade       int      `toml:"grade"`
	Standards   []string `toml:"standards"`
	Easier      string   `toml:"easier"`
	Harder      string   `toml:"harder"`
	Kinds       []string `toml:"kinds"`
	Within      int      `toml:"within"`
	Crossing    string   `toml:"crossing"`
	Strategies  []string `toml:"strategies"`
	Pictures    []string `toml:"pictures"`
	FirstLeast  int      `toml:"first-least"`
	FirstStep   int      `toml:"first-step"`
	SecondLeast int      `toml:"second-least"`
	SecondMost  int      `toml:"second-most"`
	SecondStep  int      `toml:"second-step"`
	PartMost    int      `toml:"part-most"`
	Whole       int      `toml:"whole"`
}

// ParseTargets reads targets of the form of targets.toml. Every problem is
// given at its line, and a target with a problem is left out.
func ParseTargets(file string, data []byte) ([]Target, diag.Problems) {
	r := targetReader{file: file, lines: linesOf(string(data))}
	var all struct {
		Target []written `toml:"target"`
	}
	decoder := toml.NewDecoder(strings.NewReader(string(data)))
	decoder.DisallowUnknownFields()
	if err := decoder.Decode(&all); err != nil {
		r.unreadable(err)
		return nil, r.problems
	}
	var out []Target
	seen := map[string]bool{}
	for i, w := range all.Target {
		r.index = i
		before := len(r.problems)
		t := r.target(w)
		if seen[t.ID] {
			r.add("id", fmt.Sprintf("%q is used twice", t.ID), "give each target a word of its own")
		}
		seen[t.ID] = true
		if len(r.problems) == before {
			out = append(out, t)
		}
	}
	r.neighbors(all.Target, seen)
	if len(all.Target) == 0 {
		r.problems = append(r.problems, diag.Problem{File: file, Text: "there is no target", Hint: "begin one with [[target]]"})
	}
	r.problems.Sort()
	return out, r.problems
}

// targetReader gathers what is wrong with a file of targets.
type targetReader struct {
	file     string
	lines    []map[string]int // by target: the line of each setting, "" for its head
	index    int
	problems diag.Problems
}

// add notes a problem at the line of a setting, or of the target's head.
func (r *targetReader) add(setting, text, hint string) {
	line := 0
	if r.index < len(r.lines) {
		line = r.lines[r.index][setting]
		if line == 0 {
			line = r.lines[r.index][""]
		}
	}
	r.problems = append(r.problems, diag.Problem{File: r.file, Line: line, Text: text, Hint: hint})
}

// unreadable notes what the TOML reader could not make sense of.
func (r *targetReader) unreadable(err error) {
	var unknown *toml.StrictMissingError
	var slip *toml.DecodeError
	switch {
	case errors.As(err, &unknown):
		for _, e := range unknown.Errors {
			row, column := e.Position()
			key := strings.Join(e.Key()[max(0, len(e.Key())-1):], "")
			r.problems = append(r.problems, diag.Problem{File: r.file, Line: row, Column: column,
				Text: fmt.Sprintf("%q is not a setting of a target", key), Hint: didYouMean(key, settings)})
		}
	case errors.As(err, &slip):
		row, column := slip.Position()
		r.problems = append(r.problems, diag.Problem{File: r.file, Line: row, Column: column,
			Text: "this line cannot be read: " + strings.TrimPrefix(slip.Error(), "toml: "),
			Hint: `words stand in quotes, lists in [ ], numbers as they are`})
	default:
		r.problems = append(r.problems, diag.Problem{File: r.file, Text: err.Error()})
	}
}

var settings = []string{"id", "can", "about", "grade", "standards", "easier", "harder", "kinds", "within", "crossing", "strategies",
	"pictures", "first-least", "first-step", "second-least", "second-most", "second-step", "part-most", "whole"}

func didYouMean(typed string, allowed []string) string {
	if near := diag.Nearest(typed, allowed); near != "" {
		return fmt.Sprintf("did you mean %q?", near)
	}
	return "there are: " + strings.Join(allowed, ", ")
}

var setting = regexp.MustCompile(`^\s*([a-z-]+)\s*=`)

// linesOf finds the line of every setting of every target.
func linesOf(text string) []map[string]int {
	var out []map[string]int
	for i, line := range strings.Split(text, "\n") {
		if strings.HasPrefix(strings.TrimSpace(line), "[[target]]") {
			out = append(out, map[string]int{"": i + 1})
		} else if m := setting.FindStringSubmatch(line); m != nil && len(out) > 0 {
			out[len(out)-1][m[1]] = i + 1
		}
	}
	return out
}

// words reads a list of words, each by parse.
func words[T fmt.Stringer](r *targetReader, name string, typed []string, parse func(string) (T, bool), all []T) []T {
	var out []T
	allowed := make([]string, len(all))
	for i, v := range all {
		allowed[i] = v.String()
	}
	for _, word := range typed {
		v, ok := parse(word)
		if !ok {
			r.add(name, fmt.Sprintf("%q is not known in %s", word, name), didYouMean(word, allowed))
			continue
		}
		out = append(out, v)
	}
	if len(typed) == 0 {
		r.add(name, name+" is missing", "there are: "+strings.Join(allowed, ", "))
	}
	return out
}
