package reading

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"homebuild/internal/problem"
)

// englishWords are the number words that the English language file has.
func englishWords() map[string]int {
	words := map[string]int{}
	for n, w := range strings.Fields("zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty") {
		words[w] = n
	}
	return words
}

// numberWords are the number words that the language files have.
func numberWords(tag string) map[string]int {
	lists := map[string]string{
		"es": "cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis diecisiete dieciocho diecinueve veinte",
		"fr": "zéro un deux trois quatre cinq six sept huit neuf dix onze douze treize quatorze quinze seize dix-sept dix-huit dix-neuf vingt",
		"pt": "zero um dois três quatro cinco seis sete oito nove dez onze doze treze catorze quinze dezesseis dezessete dezoito dezenove vinte",
	}
	if tag == "en" {
		return englishWords()
	}
	words := map[string]int{"una": 1, "un": 1, "une": 1, "uma": 1, "duas": 2}
	for n, w := range strings.Fields(lists[tag]) {
		words[w] = n
	}
	return words
}

// meant is a story with what its author meant.
type meant struct {
	text string
	want string // a reading line; "-" for none
	hard bool   // the reader may be unsure or silent
}

func stories(t *testing.T, name string) []meant {
	t.Helper()
	data, err := os.ReadFile("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	var out []meant
	text := ""
	for line := range strings.SplitSeq(string(data), "\n") {
		want, isWant := strings.CutPrefix(line, "= ")
		switch {
		case strings.HasPrefix(line, "#") || strings.TrimSpace(line) == "":
		case isWant:
			want, hard := strings.CutPrefix(want, "* ")
			out = append(out, meant{text: text, want: want, hard: hard})
			text = ""
		default:
			text = strings.TrimSpace(text + " " + line)
		}
	}
	return out
}

// tally counts the proposals for the stories of one kind.
type tally struct{ stories, right, sure, wrong int }

// score reads every story and counts, for each kind, how many of its stories
// were read right, and how many stories were wrongly read as it.
func score(t *testing.T, tag string, list []meant, log func(meant, Reading)) map[string]*tally {
	t.Helper()
	r := NewReader(tag, numberWords(tag))
	out := map[string]*tally{"-": {}}
	for _, k := range problem.Kinds() {
		out[k.String()] = &tally{}
	}
	for _, m := range list {
		text, err := r.Mark(m.text)
		if err != nil {
			t.Fatalf("%s: %v", m.text, err)
		}
		got := r.Read(text)
		kind, _, _ := strings.Cut(m.want, " ")
		out[kind].stories++
		line := "-"
		if got.Certainty != CannotTell {
			line = Line(got.Problem)
		}
		switch {
		case line == m.want:
			out[kind].right++
			if got.Certainty == Sure {
				out[kind].sure++
			}
		case line != "-":
			out[got.Problem.Kind().String()].wrong++
		}
		log(m, got)
	}
	return out
}

// table prints precision and recall by kind.
func table(t *testing.T, name string, by map[string]*tally) (all tally) {
	t.Helper()
	t.Logf("%s: kind, stories, read right, of these sure, wrongly read as it", name)
	for _, k := range problem.Kinds() {
		x := by[k.String()]
		t.Logf("%-26s %2d %2d %2d %2d", k, x.stories, x.right, x.sure, x.wrong)
		all.stories, all.right, all.sure, all.wrong = all.stories+x.stories, all.right+x.right, all.sure+x.sure, all.wrong+x.wrong
	}
	t.Logf("no reading: %d stories, %d left unread", by["-"].stories, by["-"].right)
	t.Logf("%s: precision %d of %d, recall %d of %d, of these sure %d", name, all.right, all.right+all.wrong, all.right, all.stories, all.sure)
	return all
}

// languages are those that have cues.
func languages(t testing.TB) []string {
	t.Helper()
	files, err := filepath.Glob("*.toml")
	if err != nil || len(files) == 0 {
		t.Fatalf("no cue files: %v", err)
	}
	for i, file := range files {
		files[i] = strings.TrimSuffix(file, ".toml")
	}
	return files
}

// The stories that the reader was tuned on: nothing is read wrongly, and what
// is not marked as hard is read.
func TestStories(t *testing.T) {
	for _, tag := range languages(t) {
		list := stories(t, tag+"/stories.txt")
		if len(list) < 60 {
			t.Fatalf("%s: %d stories, want at least 60", tag, len(list))
		}
		by := score(t, tag, list, func(m meant, got Reading) {
			line := "-"
			if got.Certainty != CannotTell {
				line = Line(got.Problem)
			}
			switch {
			case line == m.want && (m.hard || got.Certainty == Sure || line == "-"):
			case line == "-" && m.hard:
			default:
				t.Errorf("%s\n  want %s\n  got  %s (%s: %s)", m.text, m.want, line, got.Certainty, got.Why)
			}
		})
		table(t, tag+", tuned on", by)
	}
}

// The stories that were put aside, before or after tuning: the figures are those
// of docs/own-stories.md, and a wrong reading that the reader is sure of is never
// right.
func TestHeldOut(t *testing.T) {
	tests := []struct {
		tag, name string
		right     int // as measured: es, fr and pt when the set was first run
		wrong     int // measured, too; none without a doubt
	}{
		{"en", "en/held-out.txt", 29, 0},
		{"en", "en/held-out-later.txt", 18, 0},
		{"es", "es/held-out.txt", 18, 1},
		{"fr", "fr/held-out.txt", 24, 1},
		{"pt", "pt/held-out.txt", 23, 2},
	}
	for _, test := range tests {
		list := stories(t, test.name)
		if len(list) < 20 {
			t.Fatalf("%s: %d stories, want at least 20", test.name, len(list))
		}
		by := score(t, test.tag, list, func(m meant, got Reading) {
			if got.Certainty == Sure && Line(got.Problem) != m.want {
				t.Errorf("%s: read wrongly without a doubt: %s\n  want %s\n  got  %s", test.name, m.text, m.want, Line(got.Problem))
			}
		})
		all := table(t, test.name, by)
		if all.right < test.right || all.wrong > test.wrong {
			t.Errorf("%s: of %d stories %d are read right and %d wrongly, want at least %d and at most %d",
				test.name, all.stories, all.right, all.wrong, test.right, test.wrong)
		}
	}
}
