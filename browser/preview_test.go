//go:build browser

package browser_test

import (
	"bufio"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
)

// previewed is a school with the preview of it, as a teacher starts it.
type previewed struct {
	folder, url string
}

func startPreview(t *testing.T) previewed {
	t.Helper()
	dir := t.TempDir()
	program := filepath.Join(dir, "homebuild")
	if out, err := exec.Command("go", "build", "-o", program, "../cmd/homebuild").CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	p := previewed{folder: filepath.Join(dir, "my-class")}
	start := exec.Command(program, "start", p.folder, "--name", "Pebble Lane School", "--languages", "en", "--monday", "2026-09-14", "--yes")
	if out, err := start.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	run := exec.Command(program, "preview", p.folder)
	said, err := run.StdoutPipe()
	must(t, err)
	must(t, run.Start())
	t.Cleanup(func() {
		must(t, run.Process.Signal(os.Interrupt))
		if err := run.Wait(); err != nil {
			t.Errorf("ctrl-c: want a clean end, got %v", err)
		}
	})
	words := bufio.NewScanner(said)
	for words.Scan() && p.url == "" {
		p.url, _ = strings.CutPrefix(words.Text(), "preview at ")
	}
	if !strings.HasPrefix(p.url, "http://127.0.0.1:") {
		t.Fatalf("the preview says %q, want its address", p.url)
	}
	return p
}

// write saves the week file with other words, as an editor does.
func (p previewed) write(t *testing.T, settings, note string) time.Time {
	t.Helper()
	text := "# ours\n" + settings + "\n[note]\nen = \"" + note + "\"\n"
	must(t, os.WriteFile(filepath.Join(p.folder, "weeks", "2026-09-14.toml"), []byte(text), 0o644))
	return time.Now()
}

// inFrame is a script about the page in the preview's frame.
func inFrame(js string) string {
	return `(d => d && d.body && (` + js + `))(document.getElementById("frame").contentDocument)`
}

// A teacher saves a week file, and the page in the browser changes by itself.
func TestPreviewFollows(t *testing.T) {
	p := startPreview(t)
	b := openTab(t)
	b.size(1300, 900)
	b.visit(p.url)
	b.wait(inFrame(`d.querySelector("h1")`), "the newest week")
	b.wait(`document.getElementById("path").textContent == "en/2026-09-14.html"`, "the name of the newest week's first page")
	if width := eval[int](b, `document.getElementById("frame").contentWindow.innerWidth`); width != 360 {
		t.Errorf("the frame is %d wide, want 360", width)
	}
	var times []time.Duration
	for i := range 5 {
		words := fmt.Sprintf("Words of save %d.", i)
		eval[bool](b, `!(window.seenAt = 0) && !!(document.getElementById("frame").onload = () => {
			if (`+inFrame(`d.body.textContent.includes(`+quoted(words)+`)`)+`) window.seenAt = Date.now() })`)
		saved := p.write(t, `target = "add-within-20"`, words)
		b.wait(`window.seenAt`, "the page to follow")
		times = append(times, time.UnixMilli(int64(eval[float64](b, `window.seenAt`))).Sub(saved))
		time.Sleep(150 * time.Millisecond) // a person breathes between two saves
	}
	t.Logf("from saving to the page loaded anew: %v", times)

	// A slip is told with its line, and the last good page stays.
	p.write(t, `target = "ad-within-20"`, "A slip.")
	b.wait(`document.getElementById("problems").textContent.includes("did you mean \"add-within-20\"?")`, "the slip to be told")
	if got := eval[string](b, `document.getElementById("problems").textContent`); !strings.Contains(got, "2026-09-14.toml, line 2") {
		t.Errorf("want file and line, got %q", got)
	}
	if !eval[bool](b, inFrame(`d.body.textContent.includes("Words of save 4.")`)) {
		t.Error("want the last good page to stay")
	}
	if *screenshots != "" {
		raw, err := chromedp.Run(b.ctx, chromedp.CaptureScreenshot())
		must(t, err)
		b.keep("desk/preview-slip", raw)
	}
	p.write(t, `target = "add-within-20"`, "Mended.")
	b.wait(inFrame(`d.body.textContent.includes("Mended.")`), "the mended page")
	if got := eval[string](b, `document.getElementById("problems").textContent`); got != "" {
		t.Errorf("want nothing left to mend, got %q", got)
	}
	b.wait(`document.getElementById("lamp").textContent == "up to date"`, "the lamp")
	b.mu.Lock()
	defer b.mu.Unlock()
	for _, text := range b.said {
		t.Errorf("the console says: %s", text)
	}
}
