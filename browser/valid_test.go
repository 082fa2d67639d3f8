//go:build browser

package browser_test

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// known are messages of the Nu Html Checker that we live with, and why.
var known = map[string]string{
	"CSS: “container-type”: Property “container-type” doesn't exist.": "the checker does not know CSS Containment Level 3; browsers that do not either leave the rule out",
	"CSS: Unrecognized at-rule “@container”":                          "the same",
}

// nuMessage is a message of the Nu Html Checker in its JSON format.
type nuMessage struct {
	Type    string `json:"type"`
	URL     string `json:"url"`
	Line    int    `json:"lastLine"`
	Message string `json:"message"`
	Extract string `json:"extract"`
}

// validate asks the checker about files, or about all pages of a folder.
func validate(t *testing.T, paths ...string) []nuMessage {
	t.Helper()
	var out bytes.Buffer
	args := append([]string{"-Xss4m", "-jar", "node_modules/vnu-jar/build/dist/vnu.jar", "--format", "json", "--skip-non-html", "--exit-zero-always"}, paths...)
	cmd := exec.Command("java", args...)
	cmd.Stderr = &out
	if err := cmd.Run(); err != nil {
		t.Fatalf("%v: %s; sh browser/setup.sh installs it", err, out.String())
	}
	var report struct{ Messages []nuMessage }
	if err := json.Unmarshal(out.Bytes(), &report); err != nil {
		t.Fatalf("%v: %.300s", err, out.String())
	}
	return report.Messages
}

// guessed reports whether the checker only guesses the language of a page that it
// does not know: it takes Haitian Creole for French.
func guessed(message string) bool {
	return strings.HasPrefix(message, "This document appears to be written in") && strings.Contains(message, `“lang="ht"”`)
}

// pagesToValidate are the pages of the weeks that the tests look at, in every
// language, and those of no week; with -all every page there is.
func pagesToValidate(t *testing.T) []string {
	t.Helper()
	if *all {
		return []string{public}
	}
	var out []string
	for _, pattern := range []string{"*.html", "*/index.html", "*/check/[17].html", "*/check/index.html", "*/" + week + "*.html", "*/" + pairs + "*.html", "*/" + heavy + "*.html"} {
		found, err := filepath.Glob(filepath.Join(public, pattern))
		must(t, err)
		out = append(out, found...)
	}
	return out
}

// The pages are valid HTML, SVG and CSS for the checker that the W3C and the
// WHATWG point to (Nu Html Checker, vnu-jar).
func TestValidHTML(t *testing.T) {
	t.Parallel()
	used, told := map[string]bool{}, map[string]int{}
	for _, m := range validate(t, pagesToValidate(t)...) {
		if known[m.Message] != "" {
			used[m.Message] = true
			continue
		}
		if guessed(m.Message) {
			continue
		}
		if told[m.Message]++; told[m.Message] < 4 {
			page, err := filepath.Rel(public, strings.TrimPrefix(m.URL, "file:"))
			if err != nil {
				page = m.URL
			}
			t.Errorf("%s:%d: %s: %s: %q", page, m.Line, m.Type, m.Message, m.Extract)
		}
	}
	for message, n := range told {
		t.Errorf("%d times: %s", n, message)
	}
	for message := range known {
		if !used[message] {
			t.Errorf("the known message is not said any more, take it out: %s", message)
		}
	}
}

// The checker finds a planted fault.
func TestValidHTMLFinds(t *testing.T) {
	t.Parallel()
	raw, err := os.ReadFile(filepath.Join(public, "en", week+".html"))
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	bad := strings.Replace(string(raw), "<main", "<main><p><div></div></p><img></main><main", 1)
	if err := os.WriteFile(filepath.Join(dir, "bad.html"), []byte(bad), 0o644); err != nil {
		t.Fatal(err)
	}
	if len(validate(t, dir)) == 0 {
		t.Error("the checker finds nothing in a page that is not valid")
	}
}
