//go:build unix

package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"homebuild/internal/desk"
	"homebuild/internal/deskfolder"
)

// TestDeskHostileFolder opens the desk of folders that a stranger has packed: links
// that lead out are neither read nor written through, and what is no file of a week
// keeps nobody waiting.
func TestDeskHostileFolder(t *testing.T) {
	const site, secret = "name = \"x\"\nlanguages = [\"en\"]\n", "nobody's business"
	for _, c := range []struct {
		name    string
		prepare func(folder, outside string) error
	}{
		{"a file is a link", func(folder, outside string) error {
			return os.Symlink(filepath.Join(outside, "secret.txt"), filepath.Join(folder, "weeks", "2026-09-14.toml"))
		}},
		{"a folder is a link", func(folder, outside string) error {
			if err := os.Remove(filepath.Join(folder, "weeks")); err != nil {
				return err
			}
			return os.Symlink(outside, filepath.Join(folder, "weeks"))
		}},
		{"a link that leads to itself", func(folder, _ string) error {
			return os.Symlink("2026-09-14.toml", filepath.Join(folder, "weeks", "2026-09-14.toml"))
		}},
		{"a pipe that nobody writes to", func(folder, _ string) error {
			return syscall.Mkfifo(filepath.Join(folder, "weeks", "2026-09-14.toml"), 0o644)
		}},
		{"a folder with the name of a week", func(folder, _ string) error {
			return os.Mkdir(filepath.Join(folder, "weeks", "2026-09-14.toml"), 0o755)
		}},
		{"a file without end", func(folder, _ string) error {
			name := filepath.Join(folder, "weeks", "2026-09-14.toml")
			if err := os.WriteFile(name, nil, 0o644); err != nil {
				return err
			}
			return os.Truncate(name, 1<<40)
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			folder, outside := t.TempDir(), t.TempDir()
			for name, text := range map[string]string{filepath.Join(folder, "site.toml"): site, filepath.Join(outside, "secret.txt"): secret} {
				if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			if err := os.Mkdir(filepath.Join(folder, "weeks"), 0o755); err != nil {
				t.Fatal(err)
			}
			if err := c.prepare(folder, outside); err != nil {
				t.Skip(err)
			}
			said := make(chan string, 1)
			go func() {
				d := desk.New(deskfolder.Folder(folder))
				text, gone := "target = \"add-within-20\"\n", (*string)(nil)
				said <- answered(d, "open", desk.Open{Today: "2026-09-10", Words: "en"}) + answered(d, "year", desk.None{}) +
					answered(d, "put", desk.Put{Changes: desk.Changes{"weeks/2026-09-14.toml": &text}}) +
					answered(d, "put", desk.Put{Changes: desk.Changes{"weeks/secret.txt": &text, "weeks/new.toml": &text}}) +
					answered(d, "put", desk.Put{Changes: desk.Changes{"weeks/secret.txt": gone}}) + answered(d, "copy", desk.None{})
			}()
			select {
			case all := <-said:
				if strings.Contains(all, "business") {
					t.Errorf("what lies outside is told: %.300s", all)
				}
			case <-time.After(patience):
				t.Fatal("no answer")
			}
			if text, err := os.ReadFile(filepath.Join(outside, "secret.txt")); err != nil || string(text) != secret {
				t.Errorf("what lies outside was written: %q, %v", text, err)
			}
			if there, err := os.ReadDir(outside); err != nil || len(there) != 1 {
				t.Errorf("outside lie %v, %v", there, err)
			}
		})
	}
}

// answered is what a desk says to a call, as JSON.
func answered(d *desk.Desk, call string, args any) string {
	request, err := json.Marshal(desk.Request{ID: 1, Call: call, Args: args})
	if err != nil {
		panic(err) // our own values
	}
	return string(d.Answer(request))
}
