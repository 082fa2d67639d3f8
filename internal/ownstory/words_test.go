package ownstory

import (
	"io/fs"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/pelletier/go-toml/v2"

	"homebuild/locales"
)

// wordsOf are the number words of a language's file.
func wordsOf(t testing.TB, tag string) map[string]int {
	t.Helper()
	data, err := fs.ReadFile(locales.Files, tag+".toml")
	if err != nil {
		t.Fatal(err)
	}
	var file struct{ Words map[string]any }
	if err := toml.Unmarshal(data, &file); err != nil {
		t.Fatal(err)
	}
	out := map[string]int{}
	var add func(table map[string]any)
	add = func(table map[string]any) {
		for key, value := range table {
			switch value := value.(type) {
			case string:
				n, err := strconv.Atoi(key)
				if err != nil {
					t.Fatalf("%s: %q is not a number", tag, key)
				}
				out[strings.ToLower(value)] = n
			case map[string]any:
				add(value)
			}
		}
	}
	add(file.Words)
	return out
}

// Number words as each language puts them together. The forms are those of the
// spell-out rules of Unicode CLDR (common/rbnf, "spellout-cardinal"), from memory;
// septante and nonante are those of Belgium and Switzerland.
func TestNumberWords(t *testing.T) {
	tests := []struct {
		tag, text string
		want      []int
		why       string
	}{
		{"en", "twenty one, thirty-five and ninety", []int{21, 35, 90}, "with and without a hyphen"},
		{"es", "treinta y uno, cuarenta y dos, veintitrés", []int{31, 42, 23}, "joined by a word from thirty on"},
		{"es", "veinte y tres", []int{20, 3}, "twenty is not joined by a word"},
		{"es", "ciento veinticinco, doscientas treinta y una", []int{125, 231}, "hundreds, both genders"},
		{"es", "novecientos noventa y nueve", []int{999}, "the largest"},
		{"fr", "vingt et un, trente-deux, soixante et onze", []int{21, 32, 71}, "sixty goes on to nineteen"},
		{"fr", "quatre-vingts, quatre-vingt-dix-sept, quatre-vingt-un", []int{80, 97, 81}, "four twenties"},
		{"fr", "neuf cent quatre-vingt-dix-neuf", []int{999}, "the most words"},
		{"fr", "septante-trois, nonante, cent vingt", []int{73, 90, 120}, "other countries' tens; hundreds"},
		{"fr", "quatre, vingt", []int{4, 20}, "a comma parts them"},
		{"pt", "vinte e três, trinta e duas, cento e vinte e cinco", []int{23, 32, 125}, "joined by a word each time"},
		{"pt", "quatorze, dezasseis, dezesseis", []int{14, 16, 16}, "both sides of the ocean"},
		{"ru", "У Лины восемь ракушек, потом двадцать пять.", []int{8, 25}, "the words of the language's file alone"},
		{"uk", "дві, одинадцять", []int{2, 11}, "genders of the language's file"},
		{"ko", "연필 세 자루와 열한 자루", []int{3, 11}, "native words before a counter"},
		{"ko", "조개껍데기 스물다섯 개와 서른 개, 이십오 분", []int{25, 30, 25}, "native and Chinese tens"},
		{"ko", "이 사람은 일을 해요", []int{}, "words that say something else"},
		{"ru", "тридцать пять, двадцати одного, сто сорок две, трое", []int{35, 21, 142, 3}, "tens, cases, hundreds, people"},
		{"uk", "п’ятдесят одна, тридцять п'ять, дев’ять", []int{51, 35, 9}, "apostrophes of either sort"},
		{"vi", "hai mươi lăm, ba mươi mốt, bốn mươi tư, một trăm linh năm", []int{25, 31, 44, 105}, "ones that change behind tens"},
		{"zh-Hans", "小丽有二十五个贝壳和十二颗石子，又找到两个", []int{25, 12, 2}, "before a measure word"},
		{"zh-Hans", "他们一起吃三明治，十分高兴，第三个也来了", []int{}, "parts of other words"},
		{"ar", "خمسة وعشرون صدفة، ثلاث عشرة نجمة، سبع", []int{25, 13, 7}, "ones before tens, both genders"},
		{"ht", "kenz koki, vennsenk liv ak senkant bouton", []int{15, 25, 50}, "simple words"},
		{"so", "shan iyo labaatan buug, labaatan iyo saddex, laba iyo toban", []int{25, 23, 12}, "ones first or tens first"},
		{"en", "one hundred and five, two hundred thirty-one, a hundred", []int{105, 231, 100}, "hundreds"},
		{"en", "twenty and five", []int{20, 5}, "no word between tens and ones"},
		{"xx", "eight, 8", []int{8}, "a language without words"},
	}
	for _, test := range tests {
		var words map[string]int
		if test.tag != "xx" {
			words = wordsOf(t, test.tag)
		}
		if diff := cmp.Diff(test.want, values(read(t, NewLanguage(test.tag, words), test.text))); diff != "" {
			t.Errorf("%s: %s: %s (-want +got):\n%s", test.tag, test.text, test.why, diff)
		}
	}
}

// Every published spelling is read. The file names its source.
func TestSpelledOut(t *testing.T) {
	data, err := os.ReadFile("testdata/spelled-out.tsv")
	if err != nil {
		t.Fatal(err)
	}
	languages := map[string]Language{}
	for row := range strings.Lines(string(data)) {
		cells := strings.Split(strings.TrimSpace(row), "\t")
		if len(cells) != 3 {
			continue
		}
		tag, words := cells[0], cells[2]
		if _, ok := languages[tag]; !ok {
			languages[tag] = NewLanguage(tag, wordsOf(t, tag))
		}
		if tag == "zh-Hans" {
			words += "个" // words are read before a measure
		}
		if got := values(read(t, languages[tag], words)); len(got) != 1 || strconv.Itoa(got[0]) != cells[1] {
			t.Errorf("%s: %s: want %s, got %v", tag, words, cells[1], got)
		}
	}
	if len(languages) < 10 {
		t.Errorf("read %d languages, want 10", len(languages))
	}
}
