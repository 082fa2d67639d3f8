package translate

import (
	"strings"
	"testing"
)

// Whatever comes back as a reading, reading it ends, what belongs nowhere is told with
// its line, and each remark is of the file, below a sentence that the list at its end names.
func FuzzRemarks(f *testing.F) {
	good := reading.String()
	for _, seed := range []string{
		"", good, strings.ReplaceAll(good, "\n>", "\n> 21 shell"), strings.ReplaceAll(good, "\n", "\r\n> x\r\n"),
		"> lost\n" + good, good + good, strings.Replace(good, "1  One.", "999999999999999999999  One.\n> x", 1),
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		remarks, problems := Remarks("so", "so.txt", text)
		for _, p := range problems {
			if p.File != "so.txt" || p.Text == "" || p.Line > 1+strings.Count(text, "\n") {
				t.Errorf("a problem without a true place: %+v", p)
			}
		}
		for _, r := range remarks {
			if r.ID == "" || !strings.Contains(text, r.ID) || len(r.Reading) == 0 {
				t.Errorf("not of the file: %+v", r)
			}
			for _, x := range r.Reading {
				for line := range strings.SplitSeq(x.Remark, "\n") {
					if line == "" || !strings.Contains(text, line) {
						t.Errorf("%q is not of the file", line)
					}
				}
			}
		}
	})
}
