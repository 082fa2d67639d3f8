//go:build browser

package browser_test

import (
	"os"
	"os/exec"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/pelletier/go-toml/v2"

	"homebuild/internal/i18n"
	"homebuild/locales"
)

// dictionaries are Debian's hunspell dictionaries: hunspell-es, -fr, -pt-br,
// -ru, -uk, -vi, -ko, -ar, -en-us.
var dictionaries = map[string]string{
	"en": "en_US", "es": "es_ES", "fr": "fr", "pt": "pt_BR", "ru": "ru_RU", "uk": "uk_UA", "vi": "vi_VN", "ko": "ko", "ar": "ar",
}

// withoutDictionary are the languages that Debian 12 has no dictionary for.
var withoutDictionary = []string{"ht", "so", "zh-Hans"}

// misspelled is a word in each language that is to be found.
var misspelled = map[string]string{
	"en": "becuase", "es": "conhca", "fr": "coquiilage", "pt": "conhca", "ru": "ракушак", "uk": "мушлля", "vi": "xyzzy", "ko": "깟뮮쿻", "ar": "صدففة",
}

// Every word of a language file is in the dictionary, or in the list of good
// words with the reason why it is right: testdata/spelling/xx.txt. A dictionary takes
// longer to read than the words, so that what it finds is planted among them.
func TestSpelling(t *testing.T) {
	t.Parallel()
	for _, tag := range i18n.Tags(locales.Files) {
		if slices.Contains(withoutDictionary, tag) {
			continue
		}
		t.Run(tag, func(t *testing.T) {
			t.Parallel()
			good := goodWords(t, tag)
			unknown := unknownWords(t, dictionaries[tag], textsOf(t, tag)+"\n"+misspelled[tag])
			at, found := slices.BinarySearch(unknown, misspelled[tag])
			if !found {
				t.Fatalf("%q passes as a word", misspelled[tag])
			}
			unknown = slices.Delete(unknown, at, at+1)
			for _, word := range unknown {
				if _, ok := good[word]; !ok {
					t.Errorf("%q is not in the dictionary %s: mend it, or list it with a reason in testdata/spelling/%s.txt", word, dictionaries[tag], tag)
				}
			}
			for word := range good {
				if !slices.Contains(unknown, word) {
					t.Errorf("testdata/spelling/%s.txt lists %q, which is no longer needed", tag, word)
				}
			}
		})
	}
}

// goodWords reads a list: a word, and after # why it is right. A line that
// begins with # is the reason of the words below it.
func goodWords(t *testing.T, tag string) map[string]string {
	t.Helper()
	data, err := os.ReadFile("testdata/spelling/" + tag + ".txt")
	if err != nil {
		t.Fatal(err)
	}
	words, reason := map[string]string{}, ""
	for _, line := range strings.Split(string(data), "\n") {
		word, own, _ := strings.Cut(line, "#")
		word, own = strings.TrimSpace(word), strings.TrimSpace(own)
		switch {
		case word == "" && own != "":
			reason = own
		case word == "":
			reason = ""
		case own == "" && reason == "":
			t.Errorf("testdata/spelling/%s.txt: %q has no reason", tag, word)
		default:
			words[word] = own + reason
		}
	}
	return words
}

// A place, and what is written on to it or to a number: in Korean a particle, of
// which the dictionary knows only whole words.
var (
	anyPlace = regexp.MustCompile(`\{\{[^}]*\}\}`)
	particle = regexp.MustCompile(`\d+\p{Hangul}+`)
)

// textsOf are all texts of a language file; a digit stands for each place.
func textsOf(t *testing.T, tag string) string {
	t.Helper()
	data, err := locales.Files.ReadFile(tag + ".toml")
	if err != nil {
		t.Fatal(err)
	}
	var file map[string]any
	if err := toml.Unmarshal(data, &file); err != nil {
		t.Fatal(err)
	}
	delete(file, "language")
	delete(file, "person") // invented names, in the forms that sentences ask for
	var texts []string
	var walk func(key string, value any)
	walk = func(key string, value any) {
		switch v := value.(type) {
		case string:
			if key != "description" && key != "hash" && key != "source" && key != "gender" {
				texts = append(texts, particle.ReplaceAllString(anyPlace.ReplaceAllString(v, "1"), "1"))
			}
		case map[string]any:
			for key, inner := range v {
				walk(key, inner)
			}
		}
	}
	walk("", file)
	if len(texts) < 500 {
		t.Fatalf("%s: only %d texts found", tag, len(texts))
	}
	return strings.Join(texts, "\n")
}

// unknownWords are the words that a dictionary does not have, each once.
func unknownWords(t *testing.T, dictionary, text string) []string {
	t.Helper()
	run := exec.Command("hunspell", "-d", dictionary, "-i", "utf-8", "-l")
	run.Stdin = strings.NewReader(text)
	out, err := run.Output()
	if err != nil {
		t.Fatalf("hunspell %s: %v; sh browser/setup.sh installs it", dictionary, err)
	}
	words := strings.Fields(string(out))
	slices.Sort(words)
	return slices.Compact(words)
}
