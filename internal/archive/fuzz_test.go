package archive

import (
	"bytes"
	"errors"
	"testing"
	"unicode/utf8"

	"homebuild/internal/output"
)

// Whatever is opened as a zip, reading it ends within its limits, and what was read
// can be written and comes back the same.
func FuzzRead(f *testing.F) {
	f.Add([]byte("PK\x05\x06"))
	f.Add(packed(f, [2]string{"site.toml", "name = \"x\""}, [2]string{"weeks/2026-09-14.toml", "x"}))
	f.Add(packed(f, [2]string{"../x", "1"}, [2]string{"a/", ""}, [2]string{"A", "1"}, [2]string{"a", "2"}, [2]string{"con.txt", "\x00"}))
	f.Fuzz(func(t *testing.T, data []byte) {
		texts, left, err := Read(data)
		if err != nil {
			if !errors.Is(err, ErrBroken) && !errors.Is(err, ErrLarge) {
				t.Errorf("an error that no teacher was told of: %v", err)
			}
			return
		}
		var files []output.File
		all := 0
		for path, text := range texts {
			if !utf8.ValidString(text) || len(text) > MostFile {
				t.Errorf("%s is no text of a size that is opened", path)
			}
			all += len(text)
			files = append(files, output.Text(path, text))
		}
		if len(texts)+len(left) > MostFiles || all > MostBytes {
			t.Fatalf("%d files, %d bytes", len(texts)+len(left), all)
		}
		if all > 1<<20 {
			return // written again it would take the time of ten thousand others
		}
		var zip bytes.Buffer
		if err := Write(&zip, "", files); err != nil {
			t.Fatal(err)
		}
		again, left, err := Read(zip.Bytes())
		if err != nil || len(left) > 0 || len(again) != len(texts) {
			t.Fatalf("%d texts come back as %d, %q left out: %v", len(texts), len(again), left, err)
		}
		for path, text := range texts {
			if again[path] != text {
				t.Errorf("%q comes back as another text", path)
			}
		}
	})
}
