package i18n

import "testing"

// Words are known by their first five letters, in scripts of syllables by each two signs
// side by side; whole words are themselves, and signs of Chinese are words.
func TestStems(t *testing.T) {
	for _, row := range []struct {
		text    string
		letters int
		want    int
	}{
		{"", 5, 0}, {"Apples, apple!", 5, 1}, {"Apples, apple!", 0, 2}, {"one two {{.N}} one", 5, 2}, {"appl apple", 5, 2},
		{"사과나무", 5, 3}, {"사과", 5, 1}, {"사", 5, 0}, {"사과 나무", 0, 2},
		{"苹果树", 5, 2}, {"苹果树", 0, 3}, {"苹果苹果", 5, 2},
	} {
		if got := len(stemsOf(sentenceOf(t, row.text), row.letters)); got != row.want {
			t.Errorf("%q by %d letters has %d stems, want %d", row.text, row.letters, got, row.want)
		}
	}
	stems := func(text string) stems { return stemsOf(sentenceOf(t, text), 5) }
	if got := stems("boats and trains").shared(stems("trains or boats")); got != 2 {
		t.Errorf("two words are shared, counted %d", got)
	}
	// Trains do not tell: the other question has them, too.
	for _, row := range []struct {
		own, others string
		want        int
	}{
		{"boats", "trains", -1}, {"trains", "kites", 1}, {"boats", "kites", 0}, {"boats kites", "boats", -1}, {"boats", "boats kites", 1}, {"", "boats trains kites", 2},
	} {
		if got := stems("boats trains kites").nearer(stems("trains"), stems(row.own), stems(row.others)); got != row.want {
			t.Errorf("nearer to %q than to %q by %d, want %d", row.others, row.own, got, row.want)
		}
	}
	if stems("사과나무").shared(stems("나무")) != 1 || stems("苹果树").shared(stems("果树")) != 1 {
		t.Error("two signs side by side are known again")
	}
}
