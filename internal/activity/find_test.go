package activity

import (
	"slices"
	"testing"
)

// What a teacher types, and what stands first.
func TestFind(t *testing.T) {
	targets := embedded(t)
	sentences := map[string]string{
		"find-the-part-within-20":      "I can find the missing part.",
		"find-the-part-within-100":     "I can find a missing part, with numbers to 100.",
		"subtract-past-ten-within-100": "I can subtract when a ten must be opened.",
		"partners-of-ten":              "I can find the partner that makes ten.",
		"two-steps-within-100":         "I can solve a story with two steps and bigger numbers.",
	}
	say := func(t Target) string { return sentences[t.ID] }
	for _, row := range []struct {
		query, first string
	}{
		{"add-within-20", "add-within-20"},
		{"I can find the missing part.", "find-the-part-within-20"},
		{"missing part 100", "find-the-part-within-100"},
		{"missing part 37", "find-the-part-within-20"}, // no range is to 37: a word as any other
		{"opened ten", "subtract-past-ten-within-100"},
		{"2.OA.B.2", "facts-within-20"},
		{"2.nbt.b.8", "add-hundreds-within-1000"},
		{"K.OA.A.4", "what-makes-ten"},
		{"AC9M2N04 three", "add-tens-within-100"}, // no target of that code says three: the first that has it
		{"England Y3", "add-hundreds-within-1000"},
		{"grade 2 steps", "two-steps-within-20"},
		{"two steps within 100", "two-steps-within-100"},
		{"partner of ten", "partners-of-ten"},
		{"subtrcat 1000", "subtract-hundreds-within-1000"},
		{"comparing 20", "compare-within-20"},
		{"kindergarten", "add-within-5"},
		{"3", "add-past-ten-within-1000"},
	} {
		found := Find(row.query, targets, say)
		if len(found) == 0 || found[0].ID != row.first {
			t.Errorf("%q finds %v, want %s first", row.query, ids(found), row.first)
		}
	}
}

// Grade, range and code bind; the list's order stays; nonsense finds nothing.
func TestFindBinds(t *testing.T) {
	targets := embedded(t)
	say := func(Target) string { return "" }
	for _, row := range []struct {
		query string
		want  func(Target) bool
	}{
		{"", func(Target) bool { return true }},
		{"grade 2", func(t Target) bool { return t.Grade == 2 }},
		{"K", func(t Target) bool { return t.Grade == 0 }},
		{"2.OA.A.1", func(t Target) bool { return slices.Contains(t.Standards, "2.OA.A.1") }},
		{"1.nbt", func(t Target) bool { return t.names("1nbt") }},
		{"2 within 20", func(t Target) bool { return t.Grade == 2 && t.Within == 20 }},
		{"grade 0 1000", func(Target) bool { return false }},
		{"quicksilver", func(Target) bool { return false }},
		{"kindergarten quicksilver", func(t Target) bool { return t.Grade == 0 }},
		{"within 20 quicksilver", func(t Target) bool { return t.Within == 20 }},
		{"2.OA.A.1 quicksilver", func(t Target) bool { return slices.Contains(t.Standards, "2.OA.A.1") }},
	} {
		var want []string
		for _, target := range targets {
			if row.want(target) {
				want = append(want, target.ID)
			}
		}
		if got := ids(Find(row.query, targets, say)); !slices.Equal(got, want) {
			t.Errorf("%q finds %v, want %v", row.query, got, want)
		}
	}
}

// Of the words those count most that few targets have; a word stands for another form of
// it, where the two begin with the same four letters.
func TestFindByWords(t *testing.T) {
	sentences := map[string]string{
		"tens":     "I can count the ten and the ones of a partition.",
		"boats":    "I can add boats by counting on.",
		"trains":   "I can subtract trains by counting back.",
		"partners": "I can add partners by counting both.",
	}
	var targets []Target
	for _, id := range []string{"tens", "boats", "trains", "partners"} {
		targets = append(targets, Target{ID: id})
	}
	for query, want := range map[string][]string{
		"trains counting":    {"trains"}, // three count, one has trains
		"counting add":       {"boats", "partners"},
		"train":              {"trains"},
		"part":               {"tens"}, // partition, before partners in the alphabet
		"subtr":              {"trains"},
		"partnership boat":   {"boats", "partners"},
		"tenfold":            nil,        // three letters say little
		"tra":                {"trains"}, // but where one word alone begins with them
		"boats quicksilver":  {"boats"},
		"counting":           {"boats", "trains", "partners"},
		"counting on trains": {"boats", "trains"},
	} {
		if got := ids(Find(query, targets, func(t Target) string { return sentences[t.ID] })); !slices.Equal(got, want) {
			t.Errorf("%q finds %v, want %v", query, got, want)
		}
	}
}

func ids(targets []Target) []string {
	var out []string
	for _, t := range targets {
		out = append(out, t.ID)
	}
	return out
}

// What stands in a file names a target without doubt, or several, or none: it is
// never guessed.
func TestNamed(t *testing.T) {
	targets := embedded(t)
	say := func(t Target) string {
		return map[string]string{"find-the-part-within-20": "I can find the missing part."}[t.ID]
	}
	for _, row := range []struct {
		typed, first string
		several      bool
	}{
		{"add-within-20", "add-within-20", false},
		{"add-within-5", "add-within-5", false}, // the first of the list
		{"Add-within-20 ", "add-within-20", false},
		{"I can find the missing part.", "find-the-part-within-20", false},
		{"i can find the missing part", "find-the-part-within-20", false},
		{"I can find the part", "", false},
		{"K.OA.A.4", "what-makes-ten", false},
		{"2.OA.A.1", "add-within-100", true},
		{"2 oa a 1", "add-within-100", true},
		{"2.OA", "", false},
		{"England Y1", "facts-within-10", true},
		{"2", "", false},
		{"ad-within-20", "", false},
		{"", "", false},
	} {
		named := Named(row.typed, targets, say)
		first := ""
		if len(named) > 0 {
			first = named[0].ID
		}
		if first != row.first || (len(named) > 1) != row.several {
			t.Errorf("%q names %v, want %q first", row.typed, ids(named), row.first)
		}
	}
}
