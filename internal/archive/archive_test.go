package archive

import (
	"archive/zip"
	"bytes"
	"compress/flate"
	"encoding/binary"
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"homebuild/internal/output"
)

// packed is a zip with these files, whatever their names.
func packed(t testing.TB, files ...[2]string) []byte {
	t.Helper()
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	for _, f := range files {
		to, err := w.Create(f[0])
		if err != nil {
			t.Fatal(err)
		}
		if _, err := to.Write([]byte(f[1])); err != nil {
			t.Fatal(err)
		}
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestWriteAndRead(t *testing.T) {
	files := []output.File{output.Text("b/c.toml", "c"), output.Text("a.toml", "a")}
	var one, two bytes.Buffer
	if err := Write(&one, "desk", files); err != nil {
		t.Fatal(err)
	}
	slices.Reverse(files)
	if err := Write(&two, "desk", files); err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(one.Bytes(), two.Bytes()) {
		t.Error("the order of the files changes the zip")
	}
	texts, left, err := Read(one.Bytes())
	if diff := cmp.Diff(map[string]string{"desk/a.toml": "a", "desk/b/c.toml": "c"}, texts); diff != "" || err != nil || len(left) > 0 {
		t.Errorf("%v, left out %v\n%s", err, left, diff)
	}
}

// TestPaths opens names that lead elsewhere, or that some computer cannot keep.
func TestPaths(t *testing.T) {
	bad := []string{
		"../up.toml", "a/../../up.toml", "/etc/passwd", `..\up.toml`, `C:\up.toml`, "C:up.toml", "a//b.toml", "./a.toml", "a/./b.toml", "a/..",
		"nul\x00.toml", "line\nend.toml", "dot./a.toml", "space /a.toml", "a.toml.", "star*.toml", "\xff.toml",
		"~\x7f", "weeks/../../up.toml", "//host/share.toml", `\\?\C:\up.toml`, "a.toml:stream", "nul", "weeks/NUL.toml", "aux.toml", "com1", "lpt¹.txt", "themes/con/colours.toml",
	}
	for _, name := range bad {
		texts, left, err := Read(packed(t, [2]string{name, "x"}, [2]string{"site.toml", "y"}))
		if err != nil || len(texts) != 1 || !slices.Equal(left, []string{name}) {
			t.Errorf("%q: %v, left out %q, %v", name, texts, left, err)
		}
	}
}

// TestContents opens what is no text, is there twice, is a link, or is a bomb.
func TestContents(t *testing.T) {
	big := strings.Repeat("0", MostFile+1)
	var bomb [][2]string
	for i := range 2 + MostBytes/MostFile {
		bomb = append(bomb, [2]string{strings.Repeat("a", i+1), strings.Repeat("0", MostFile)})
	}
	many := make([][2]string, MostFiles+1)
	for i := range many {
		many[i] = [2]string{strings.Repeat("x", i%200) + "/" + strings.Repeat("y", i/200), ""}
	}
	cut := packed(t, [2]string{"site.toml", "text"})
	spoiled := bytes.Replace(cut, []byte("text"), []byte("tixt"), 1)
	var link bytes.Buffer
	w := zip.NewWriter(&link)
	head := &zip.FileHeader{Name: "site.toml"}
	head.SetMode(0o777 | 1<<27) // fs.ModeSymlink
	to, err := w.CreateHeader(head)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := to.Write([]byte("/etc/passwd")); err != nil || w.Close() != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		name string
		zip  []byte
		left int
		err  error
	}{
		{"no zip", []byte("hello"), 0, ErrBroken},
		{"nothing", nil, 0, ErrBroken},
		{"half a zip", cut[:len(cut)/2], 0, ErrBroken},
		{"a large file", packed(t, [2]string{"a", big}), 1, nil},
		{"a bomb", packed(t, bomb...), 0, ErrLarge},
		{"many files", packed(t, many...), 0, ErrLarge},
		{"a picture", packed(t, [2]string{"a.png", "\x89PNG\x00"}), 1, nil},
		{"other letters", packed(t, [2]string{"a", "\xff\xfe"}), 1, nil},
		{"a name twice, to most disks", packed(t, [2]string{"weeks/A.toml", "1"}, [2]string{"weeks/a.toml", "2"}), 1, nil},
		{"one file under many names", underManyNames(t, MostFiles), 0, ErrLarge},
		{"a size that lies", lying(t), 0, ErrBroken},
		{"packed in a way that nobody knows", strangelyPacked(t), 0, ErrBroken},
		{"a name twice", packed(t, [2]string{"a", "1"}, [2]string{"a", "2"}), 1, nil},
		{"a link", link.Bytes(), 1, nil},
		{"a folder", packed(t, [2]string{"weeks/", ""}), 0, nil},
	} {
		_, left, err := Read(c.zip)
		if !errors.Is(err, c.err) || len(left) != c.left {
			t.Errorf("%s: left out %d, %v", c.name, len(left), err)
		}
	}
	if _, _, err := Read(spoiled); len(cut) == len(spoiled) && !bytes.Equal(cut, spoiled) && !errors.Is(err, ErrBroken) {
		t.Errorf("a spoiled file: %v", err)
	}
}

// underManyNames is a zip whose list names one file of the largest size again and
// again: a small file that unpacks into gigabytes.
func underManyNames(t *testing.T, n int) []byte {
	t.Helper()
	const listAt, nameAt = 16, 46 // of the end of the list, and in an entry: APPNOTE.TXT 4.3.12, 4.3.16
	one := packed(t, [2]string{"0000", strings.Repeat("0", MostFile)})
	end := one[len(one)-22:]
	start := binary.LittleEndian.Uint32(end[listAt:])
	entry := one[start : len(one)-22]
	var list []byte
	for i := range n {
		again := bytes.Clone(entry)
		copy(again[nameAt:], fmt.Sprintf("%04d", i))
		list = append(list, again...)
	}
	end = bytes.Clone(end)
	binary.LittleEndian.PutUint16(end[8:], uint16(n))
	binary.LittleEndian.PutUint16(end[10:], uint16(n))
	binary.LittleEndian.PutUint32(end[12:], uint32(len(list)))
	return slices.Concat(one[:start], list, end)
}

// lying is a zip that states one byte for a file of many.
func lying(t *testing.T) []byte {
	t.Helper()
	var packed bytes.Buffer
	squeeze, err := flate.NewWriter(&packed, flate.BestCompression)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := squeeze.Write(bytes.Repeat([]byte{'0'}, 10<<20)); err != nil || squeeze.Close() != nil {
		t.Fatal(err)
	}
	return raw(t, &zip.FileHeader{Name: "site.toml", Method: zip.Deflate, CompressedSize64: uint64(packed.Len()), UncompressedSize64: 1}, packed.Bytes())
}

func strangelyPacked(t *testing.T) []byte {
	t.Helper()
	return raw(t, &zip.FileHeader{Name: "site.toml", Method: 99, CompressedSize64: 1, UncompressedSize64: 1}, []byte("x"))
}

func raw(t *testing.T, head *zip.FileHeader, data []byte) []byte {
	t.Helper()
	var b bytes.Buffer
	w := zip.NewWriter(&b)
	to, err := w.CreateRaw(head)
	if err != nil {
		t.Fatal(err)
	}
	if _, err := to.Write(data); err != nil || w.Close() != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}
