// Command desk-file makes desk.html, the one file in which the whole desk is: its
// page, and the engine for a browser.
//
//	go run ./cmd/desk-file -o desk.html
package main

import (
	"bytes"
	"compress/gzip"
	"encoding/json"
	"flag"
	"fmt"
	"log"
	"os"
	"os/exec"
	"path/filepath"
	"strings"

	"homebuild/internal/desk/page"
)

// most is what the file may weigh, in bytes: what a school's mail still takes. A mailbox
// often takes 10 MB (common practice, no published source), and a file grows on the way,
// 78 bytes for 57 (RFC 2045, base64): 7.3 MB, and some room for what is written with it.
const most = 7_000_000

func main() {
	log.SetFlags(0)
	out := flag.String("o", "desk.html", "the `file` to write")
	flag.Parse()
	if err := run(*out); err != nil {
		log.Fatal("desk-file: ", err)
	}
}

func run(out string) error {
	goroot, err := output("go", "env", "GOROOT")
	if err != nil {
		return err
	}
	engine, err := build(goroot)
	if err != nil {
		return err
	}
	start, err := os.ReadFile(filepath.Join(goroot, "lib/wasm/wasm_exec.js"))
	if err != nil {
		return err
	}
	worker, err := os.ReadFile("cmd/desk-engine/worker.js")
	if err != nil {
		return err
	}
	packed, err := pack(engine)
	if err != nil {
		return err
	}
	html := page.Carrying(string(start)+"\n"+string(worker), packed)
	fmt.Printf("engine %d bytes, packed %d; %s %d bytes\n", len(engine), len(packed), out, len(html))
	if len(html) > most {
		return fmt.Errorf("%s may have %d bytes at most", out, most)
	}
	return os.WriteFile(out, []byte(html), 0o644)
}

// build compiles the engine for a browser, without net/http: see nohttp, and lighter. Without
// inlining it is an eighth smaller, and hardly slower.
func build(goroot string) ([]byte, error) {
	dir, err := os.MkdirTemp("", "desk-file")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(dir)
	overlay, err := lighter(goroot, dir)
	if err != nil {
		return nil, err
	}
	engine := filepath.Join(dir, "engine.wasm")
	cmd := exec.Command("go", "build", "-overlay", overlay, "-trimpath", "-buildvcs=false", "-gcflags=all=-l", "-ldflags", "-s -w -buildid=", "-o", engine, "./cmd/desk-engine")
	cmd.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	if report, err := cmd.CombinedOutput(); err != nil {
		return nil, fmt.Errorf("%w\n%s", err, report)
	}
	return os.ReadFile(engine)
}

// lighter writes the overlay by which the go command reads our package in the place
// of net/http, and lighter language files.
func lighter(goroot, dir string) (string, error) {
	replace := map[string]string{}
	if err := lighterLanguages(dir, replace); err != nil {
		return "", err
	}
	files, err := filepath.Glob(filepath.Join(goroot, "src/net/http/*.go"))
	if err != nil {
		return "", err
	}
	for _, name := range files {
		if !strings.HasSuffix(name, "_test.go") {
			replace[name] = ""
		}
	}
	ours, err := filepath.Abs("cmd/desk-file/nohttp/http.go")
	if err != nil {
		return "", err
	}
	replace[filepath.Join(goroot, "src/net/http/http.go")] = ours
	data, err := json.Marshal(map[string]any{"Replace": replace})
	if err != nil {
		return "", err
	}
	name := filepath.Join(dir, "overlay.json")
	return name, os.WriteFile(name, data, 0o644)
}

// pack is the engine as small as gzip makes it, the same bytes each time.
func pack(engine []byte) ([]byte, error) {
	var b bytes.Buffer
	w, err := gzip.NewWriterLevel(&b, gzip.BestCompression)
	if err != nil {
		return nil, err
	}
	if _, err := w.Write(engine); err != nil {
		return nil, err
	}
	err = w.Close()
	return b.Bytes(), err
}

func output(name string, args ...string) (string, error) {
	data, err := exec.Command(name, args...).Output()
	return strings.TrimSpace(string(data)), err
}
