package reading

import (
	"os"
	"testing"
)

func TestMore(t *testing.T) {
	tag := os.Getenv("MORE")
	if tag == "" {
		t.Skip()
	}
	name := os.Getenv("FILE")
	if name == "" {
		name = "more.txt"
	}
	score(t, tag, stories(t, tag+"/"+name), func(m meant, got Reading) {
		line := "-"
		if got.Certainty != CannotTell {
			line = Line(got.Problem)
		}
		mark := "ok  "
		switch {
		case line == m.want && (got.Certainty == Sure || line == "-"):
			return
		case line == m.want:
			mark = "unsure"
		case line == "-":
			mark = "silent"
		case got.Certainty == Sure:
			mark = "WRONG!!!"
		default:
			mark = "wrong, unsure"
		}
		t.Logf("%s: %s\n   want %s\n   got  %s (%s)", mark, m.text, m.want, line, got.Why)
	})
}
