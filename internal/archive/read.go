package archive

import (
	"archive/zip"
	"bytes"
	"errors"
	"io"
	"path"
	"strings"
	"unicode/utf8"

	"homebuild/internal/pattern"
)

// Limits of a zip from a stranger. A school of forty weeks with a look and a
// language of its own has about a hundred files and less than 1 MB.
const (
	MostFiles = 2000
	MostBytes = 20 << 20 // unpacked, all together
	MostFile  = 1 << 20  // unpacked, each
)

// What a zip can be refused for.
var (
	ErrBroken = errors.New("the zip cannot be read")
	ErrLarge  = errors.New("the zip is larger than what is opened")
)

// Read gives the texts of a zip by their path, and the paths of what is left out:
// files that are no text, too large, or whose path leads elsewhere. It believes no
// size that the zip states: it unpacks up to the limits, and no further.
func Read(data []byte) (texts map[string]string, left []string, err error) {
	archive, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		return nil, nil, ErrBroken
	}
	if len(archive.File) > MostFiles {
		return nil, nil, ErrLarge
	}
	texts = map[string]string{}
	seen := map[string]bool{} // in small letters, as most disks tell names apart
	room := int64(MostBytes)
	for _, f := range archive.File {
		name, ok := safe(f.Name)
		if ok && f.FileInfo().IsDir() {
			continue
		}
		small := strings.ToLower(name)
		if !ok || seen[small] || !f.Mode().IsRegular() {
			left = append(left, f.Name)
			continue
		}
		seen[small] = true
		text, whole, err := unpack(f, min(room, MostFile))
		switch {
		case err != nil:
			return nil, nil, ErrBroken
		case !whole && room <= MostFile:
			return nil, nil, ErrLarge
		case !whole, !utf8.ValidString(text), strings.ContainsRune(text, 0):
			left = append(left, f.Name)
		default:
			texts[name] = text
		}
		room -= int64(len(text))
	}
	return texts, left, nil
}

// unpack reads a file up to a limit; whole reports whether that was all of it.
func unpack(f *zip.File, most int64) (text string, whole bool, err error) {
	r, err := f.Open()
	if err != nil {
		return "", false, err
	}
	defer r.Close()
	data, err := io.ReadAll(io.LimitReader(r, most+1))
	return string(data), int64(len(data)) <= most, err
}

// device matches names that Windows takes for a device, whatever their ending
// (Microsoft, "Naming Files, Paths, and Namespaces").
var device = pattern.Of(`(?i)^(con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³])(\.|$)`)

// safe is a path within a folder, or false for one that leads elsewhere or that
// some computer does not take.
func safe(name string) (string, bool) {
	if name == "" || strings.HasPrefix(name, "/") || strings.ContainsAny(name, "\\:*?\"<>|\x00") || !utf8.ValidString(name) {
		return name, false
	}
	clean := strings.TrimSuffix(name, "/")
	if path.Clean(clean) != clean || clean == ".." || strings.HasPrefix(clean, "../") {
		return name, false
	}
	for part := range strings.SplitSeq(clean, "/") {
		if strings.TrimRight(part, ". ") != part || device().MatchString(part) || strings.ContainsFunc(part, func(c rune) bool { return c < ' ' || c == 0x7f }) {
			return name, false
		}
	}
	return clean, true
}
