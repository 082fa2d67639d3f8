package reading

import (
	"strings"
	"testing"
)

// A form of a verb says one thing only: no language file lists it for two
// classes, or the later would win without anybody's knowing.
func TestFormsSayOneThing(t *testing.T) {
	for _, tag := range languages(t) {
		c, ok := loadCues(tag)
		if !ok {
			t.Fatalf("%s: no cues", tag)
		}
		seen := map[string]string{}
		for kind, verbs := range c.Verbs {
			for _, verb := range verbs {
				one := &cues{Verbs: map[class][]string{kind: {verb}}, Conjugations: c.Conjugations}
				base, _, _ := strings.Cut(verb, " ")
				for form := range one.conjugate() {
					if other := seen[form]; other != "" {
						t.Errorf("%s: %q is of %q and of %q", tag, form, other, string(kind)+" "+base)
					}
					seen[form] = string(kind) + " " + base
				}
			}
		}
	}
}
