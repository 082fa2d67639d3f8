package publish

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// part builds a part of a site and gives what is wrong with it.
func part(dir string, i, n int, program, version string) error {
	_, err := Write(dir, linkedSite(version), Options{Shard: Shard{i, n}, Program: program, Workers: 1})
	return err
}

// Parts of two programs, or of two states of the files, are not put together: not in an
// empty folder, and not over a site that all parts made before.
func TestPartsOfTwoKinds(t *testing.T) {
	const otherProgram, otherFiles = "this part does not go with part 1 of 3, which another program made", "this part does not go with part 1 of 3, which was made from other files, or for another day"
	for _, test := range []struct {
		name            string
		program, files  string // of part 2, where part 1 is of program 1 and files b
		want, wantsHint string
	}{
		{"another program", "2", "b", otherProgram, "the same program"},
		{"other files", "1", "a", otherFiles, "the same files"},
		{"both", "2", "a", otherProgram, "the same program"},
		{"the same", "1", "b", "", ""},
	} {
		for _, over := range []bool{false, true} {
			dir := filepath.Join(inMemory(t), "public")
			if over {
				for i := range 3 {
					if err := part(dir, i+1, 3, "0", "a"); err != nil {
						t.Fatal(err)
					}
				}
			}
			if err := part(dir, 1, 3, "1", "b"); err != nil {
				t.Fatal(err)
			}
			before := disk(t, dir)
			err := part(dir, 2, 3, test.program, test.files)
			if test.want == "" {
				if err != nil {
					t.Errorf("%s, over a site %v: %v", test.name, over, err)
				}
				continue
			}
			checkError(t, err, test.want)
			if known, ok := err.(*Error); !ok || !strings.Contains(known.Hint, test.wantsHint) || !strings.Contains(known.Hint, "part 1 first") {
				t.Errorf("%s: the hint does not say what to do: %+v", test.name, err)
			}
			if after := disk(t, dir); len(after) != len(before) {
				t.Errorf("%s, over a site %v: %d files, then %d", test.name, over, len(before), len(after))
			}
		}
	}
}

// What is legal: all parts go on to other files in any order; one that was killed is
// begun anew; one that went on by mistake comes back; what was broken off is put right,
// the part that had gone on first; and the whole settles everything.
func TestPartsGoOn(t *testing.T) {
	type step struct {
		i                int // 0 for the whole
		program, version string
		refused          bool
	}
	for name, steps := range map[string][]step{
		"in any order":       {{1, "1", "a", false}, {2, "1", "a", false}, {3, "1", "a", false}, {2, "1", "b", false}, {3, "1", "b", false}, {1, "1", "b", false}, {3, "2", "b", false}, {1, "2", "b", false}, {2, "2", "b", false}},
		"one comes back":     {{1, "1", "a", false}, {2, "1", "a", false}, {1, "1", "b", false}, {2, "1", "a", true}, {1, "1", "a", false}, {2, "1", "a", false}},
		"broken off":         {{1, "1", "a", false}, {2, "1", "a", false}, {3, "1", "a", false}, {1, "1", "b", false}, {2, "2", "b", true}, {1, "2", "b", false}, {2, "2", "b", false}, {3, "2", "b", false}},
		"a whole in between": {{1, "1", "a", false}, {2, "2", "a", true}, {0, "2", "a", false}, {2, "2", "a", false}, {1, "2", "a", false}},
	} {
		dir := filepath.Join(inMemory(t), "public")
		for k, s := range steps {
			o := Options{Program: s.program, Workers: 1}
			if s.i > 0 {
				o.Shard = Shard{s.i, 3}
			}
			if _, err := Write(dir, linkedSite(s.version), o); (err != nil) != s.refused {
				t.Errorf("%s, step %d: refused %v, want %v: %v", name, k+1, err != nil, s.refused, err)
			}
		}
	}
}

// Two parts that are made at the same time see each other at the last moment.
func TestPartsAtOnce(t *testing.T) {
	dir := filepath.Join(inMemory(t), "public")
	first, err := openState(dir, "", Shard{1, 2})
	if err != nil {
		t.Fatal(err)
	}
	defer first.close()
	second, err := openState(dir, "", Shard{2, 2})
	if err != nil {
		t.Fatal(err)
	}
	defer second.close()
	one, other := originOf("1", linkedSite("a")), originOf("2", linkedSite("a"))
	if err := first.fits(one); err != nil {
		t.Fatal(err)
	}
	if err := second.fits(other); err != nil {
		t.Fatal(err)
	}
	if err := first.claim(one); err != nil {
		t.Fatal(err)
	}
	if err := second.claim(other); err == nil {
		t.Error("two programs made the parts of one site")
	}
	if _, err := os.Stat(filepath.Join(second.dir, second.file(originsFile))); err == nil {
		t.Error("the part that was refused says that it is made from what it was refused for")
	}
}
