package activity

import (
	"strings"
	"testing"
)

const goodTarget = `[[target]]
id = "our-own"
grade = 1
kinds = ["add-to-result"]
within = 20
strategies = ["make-ten"]
pictures = ["drawing"]
`

func TestParseTargets(t *testing.T) {
	targets, problems := ParseTargets("targets.toml", goodTarget)
	if len(problems) > 0 || len(targets) != 1 || targets[0].ID != "our-own" || targets[0].Within != 20 {
		t.Fatalf("got %+v and %v, want one target and no problem", targets, problems)
	}
}

// Every slip is told at its line, with what to write instead.
func TestParseTargetsProblems(t *testing.T) {
	for _, row := range []struct {
		name, old, new string
		want           []string
	}{
		{"unknown kind", `"add-to-result"`, `"add-to-resutl"`, []string{"targets.toml:4:", `"add-to-resutl"`, `did you mean "add-to-result"?`}},
		{"unknown setting", `within = 20`, `withn = 20`, []string{"targets.toml:5:", `"withn"`, `did you mean "within"?`}},
		{"unknown strategy", `make-ten`, `maketen`, []string{"targets.toml:6:", `did you mean "make-ten"?`}},
		{"unknown picture", `drawing`, `photo`, []string{"targets.toml:7:", `"photo"`, "bar-model"}},
		{"no quotes", `"our-own"`, `our-own`, []string{"targets.toml:2:"}},
		{"wrong sort", `within = 20`, `within = "20"`, []string{"targets.toml:5:"}},
		{"range too large", `within = 20`, `within = 5000`, []string{"targets.toml:5:", "5000", "1000"}},
		{"grade too early", `grade = 1`, `grade = 7`, []string{"targets.toml:3:", "from 0 to 3"}},
		{"kind too early", `grade = 1
kinds = ["add-to-result"]`, `grade = 0
kinds = ["add-to-change"]`, []string{"targets.toml:4:", "grade 1"}},
		{"bad id", `"our-own"`, `"Our Own"`, []string{"targets.toml:2:", `"Our Own"`}},
		{"bad crossing", `within = 20`, "within = 20\ncrossing = \"sometimes\"", []string{"targets.toml:6:", "either, always, never"}},
		{"no numbers left", `within = 20`, "within = 20\nfirst-least = 30", []string{"targets.toml:1:", "add-to-result"}},
		{"limit out of reach", `within = 20`, "within = 20\nfirst-least = 9223372036854775807", []string{"targets.toml:6:", "from 1 to 1000"}},
		{"an empty list of kinds", `kinds = ["add-to-result"]`, `kinds = []`, []string{"targets.toml:4:", "kinds is missing"}},
		{"no kinds", `kinds = ["add-to-result"]`, ``, []string{"targets.toml:1:", "kinds is missing"}},
	} {
		text := strings.Replace(goodTarget, row.old, row.new, 1)
		if text == goodTarget {
			t.Fatalf("%s: the row changes nothing", row.name)
		}
		targets, problems := ParseTargets("targets.toml", text)
		if len(problems) == 0 || len(targets) > 0 {
			t.Errorf("%s: got %d targets and no problem", row.name, len(targets))
			continue
		}
		for _, want := range row.want {
			if !strings.Contains(problems.Error(), want) {
				t.Errorf("%s: %q lacks %q", row.name, problems.Error(), want)
			}
		}
	}
}

func TestParseTargetsTwice(t *testing.T) {
	targets, problems := ParseTargets("targets.toml", goodTarget+goodTarget)
	if len(targets) != 1 || len(problems) != 1 || problems[0].Line != 9 || !strings.Contains(problems[0].Text, "twice") {
		t.Errorf("got %d targets and %v, want one, and the second id told at line 9", len(targets), problems)
	}
	if _, problems := ParseTargets("targets.toml", ""); len(problems) != 1 {
		t.Errorf("an empty file: got %v, want one problem", problems)
	}
}

// What is no list is told once, and not as if it were missing, too.
func TestOneSlipIsToldOnce(t *testing.T) {
	_, problems := ParseTargets("targets.toml", strings.Replace(goodTarget, `["add-to-result"]`, `3`, 1))
	if len(problems) != 1 || problems[0].Line != 4 || strings.Contains(problems.Error(), "missing") {
		t.Errorf("got %v, want one problem in line 4", problems)
	}
}

// Whatever is in the file, reading it ends and says something or gives targets.
func FuzzParseTargets(f *testing.F) {
	f.Add(goodTarget)
	f.Add("[[target]]\nkinds = 3")
	f.Add("target = [1]")
	f.Fuzz(func(t *testing.T, text string) {
		targets, problems := ParseTargets("t.toml", text)
		if len(targets) == 0 && len(problems) == 0 {
			t.Errorf("%q gives neither a target nor a problem", text)
		}
		for _, target := range targets {
			for _, k := range target.Kinds {
				if !target.possible(k) {
					t.Errorf("%q gives a target without numbers for %v", text, k)
				}
			}
		}
	})
}
