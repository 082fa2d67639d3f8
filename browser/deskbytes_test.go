//go:build browser

package browser_test

import (
	"bytes"
	"encoding/base64"
	"encoding/json"
	"fmt"
	"io/fs"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	engine "homebuild/internal/desk"
	"homebuild/internal/tomlfile"
	example "homebuild/site"
)

// deskFile is desk.html with the real engine inside, made once for all tests.
var deskFile = sync.OnceValues(func() (string, error) {
	file := filepath.Join(workspace, "desk.html")
	make := exec.Command("go", "run", "./cmd/desk-file", "-o", file)
	make.Dir = ".."
	if out, err := make.CombinedOutput(); err != nil {
		return "", fmt.Errorf("%w\n%s", err, out)
	}
	return file, nil
})

// The engine of desk.html makes the same zip as the same files do in the program,
// which TestDeskSameBytes of cmd/homebuild holds against a build; with -all in the
// twelve languages of the example.
func TestDeskSameBytesInABrowser(t *testing.T) {
	t.Parallel()
	files := engine.Files{}
	must(t, fs.WalkDir(example.Files, ".", func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		text, err := fs.ReadFile(example.Files, name)
		files[name] = string(text)
		return err
	}))
	if !*all {
		files["site.toml"] = tomlfile.Set(files["site.toml"], "languages", `["en", "es"]`)
		for name, text := range files {
			files[name] = tomlfile.Remove(text, "note") // some are in other languages
		}
	}
	open := engine.Request{ID: 1, Call: "open", Args: engine.Open{Files: files, Today: "2027-03-01", Words: "en"}}
	site := engine.Request{ID: 2, Call: "site", Args: engine.None{}}

	native := engine.New(nil)
	zipOf(t, native.Answer(message(t, open)))
	want := zipOf(t, native.Answer(message(t, site)))

	b := newProfile(t)
	file, err := deskFile()
	must(t, err)
	b.visit("file://" + file)
	began := time.Now()
	eval[bool](b, `(() => {
		const text = id => document.getElementById(id).textContent;
		const worker = new Worker(URL.createObjectURL(new Blob([text("worker")], { type: "text/javascript" })));
		worker.onmessage = ({ data }) => { if (data.id === 2) window.answered = JSON.stringify(data) };
		worker.onerror = e => { window.answered = JSON.stringify({ fault: e.message }) };
		worker.postMessage({ engine: text("engine") });
		worker.postMessage(`+string(message(t, open))+`);
		worker.postMessage(`+string(message(t, site))+`);
		return true;
	})()`)
	for end := began.Add(10 * time.Minute); time.Now().Before(end) && !eval[bool](b, "!!window.answered"); {
		time.Sleep(100 * time.Millisecond)
	}
	got := zipOf(t, []byte(eval[string](b, "window.answered")))
	t.Logf("%d bytes after %v", len(got), time.Since(began).Round(100*time.Millisecond))
	if !bytes.Equal(want, got) {
		t.Errorf("the program's zip has %d bytes, the browser's %d, and they differ", len(want), len(got))
	}
}

func message(t *testing.T, request engine.Request) []byte {
	t.Helper()
	data, err := json.Marshal(request)
	must(t, err)
	return data
}

// zipOf is the file in an answer; nothing where the answer has none.
func zipOf(t *testing.T, answer []byte) []byte {
	t.Helper()
	var reply struct {
		Value struct{ Bytes string }
		Wrong []engine.Finding
		Fault string
	}
	must(t, json.Unmarshal(answer, &reply))
	if reply.Fault != "" || len(reply.Wrong) > 0 {
		t.Fatalf("the engine says %s %+v", reply.Fault, reply.Wrong)
	}
	zip, err := base64.StdEncoding.DecodeString(strings.TrimSpace(reply.Value.Bytes))
	must(t, err)
	return zip
}
