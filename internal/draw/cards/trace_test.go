package cards

import "testing"

func TestTrace(t *testing.T) {
	for _, tt := range []struct{ data, want, mirror, why string }{
		{"M10 20l3-4h5v-6z", "M10 20l3-4h5v-6z", "M110 20l-3-4h-5v-6z", "only what goes across turns round"},
		{"M0 0q1 2 3 4", "M0 0q1 2 3 4", "M120 0q-1 2-3 4", "all pairs of a curve"},
		{"M0 0l1 2 3-4", "M0 0l1 2l3-4", "M120 0l-1 2l-3-4", "one command for several steps"},
		{"M60 5m-3 4", "M60 5m-3 4", "M60 5m3 4", "the middle stays"},
		// SVG 1.1 section 8.3.7: the control point of t is the one before it,
		// reflected at the place between the curves.
		{"M0 0q2 6 4 0t4 0 4 0", "M0 0q2 6 4 0q2-6 4 0q2 6 4 0", "M120 0q-2 6-4 0q-2-6-4 0q-2 6-4 0", "waves"},
	} {
		if got := trace(tt.data, false).String(); got != tt.want {
			t.Errorf("%s: trace(%q): want %q, got %q", tt.why, tt.data, tt.want, got)
		}
		if got := trace(tt.data, true).String(); got != tt.mirror {
			t.Errorf("%s: mirror of %q: want %q, got %q", tt.why, tt.data, tt.mirror, got)
		}
	}
}

func TestTraceRefuses(t *testing.T) {
	for data, why := range map[string]string{
		"M1":        "half a place",
		"M1 2l3":    "half a step",
		"M1 2l":     "no step",
		"M1 2z3":    "a number too many",
		"M1 2L3 4":  "a command that trace does not know",
		"M1.5 2":    "half a unit",
		"M1 2l3 - ": "a sign alone",
		"1 2":       "no command",
	} {
		func() {
			defer func() {
				if recover() == nil {
					t.Errorf("%s: trace(%q) wants to panic", why, data)
				}
			}()
			trace(data, false)
		}()
	}
}
