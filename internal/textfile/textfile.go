// Package textfile reads the plain text files that people write and edit, and
// says in their words why one cannot be read.
package textfile

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"unicode/utf8"

	"homebuild/internal/diag"
)

// MaxSize is far more bytes than anyone writes into a file of ours, and few
// enough that a wrong file does no harm.
const MaxSize = 1 << 20

// Read reads a real file as text in UTF-8, without a byte order mark and with
// "\n" at the end of lines. The problem, if there is one, names the file as
// name. Links are not followed.
func Read(fsys fs.FS, name string) (string, *diag.Diagnostic) { return ReadUpTo(fsys, name, MaxSize) }

// ReadUpTo is Read for files of other programs, which may be larger than ours: up to so
// many bytes, in whole megabytes.
func ReadUpTo(fsys fs.FS, name string, size int) (string, *diag.Diagnostic) {
	data, problem := read(fsys, name, size)
	if problem == nil {
		data, problem = plain(data)
	}
	if problem != nil {
		problem.File = name
		return "", problem
	}
	return string(data), nil
}

// Begin reads the first bytes of a real file, up to the last whole line of them.
// What is no text in UTF-8 is a problem that Read tells.
func Begin(fsys fs.FS, name string, size int) (string, bool) {
	file, problem := open(fsys, name)
	if problem != nil {
		return "", false
	}
	defer file.Close()
	data, err := io.ReadAll(io.LimitReader(file, int64(size)))
	if err != nil {
		return "", false
	}
	data, problem = plain(data[:bytes.LastIndexByte(data, '\n')+1])
	return string(data), problem == nil
}

// IsMissing reports whether there is no file of the name.
func IsMissing(fsys fs.FS, name string) bool {
	_, err := fs.Lstat(fsys, name)
	return errors.Is(err, fs.ErrNotExist)
}

// Link tells that a folder is a link, which is not followed; nil where it is none.
func Link(fsys fs.FS, folder string) *diag.Diagnostic {
	info, err := fs.Lstat(fsys, folder)
	if err != nil || info.Mode()&fs.ModeSymlink == 0 {
		return nil
	}
	return &diag.Diagnostic{File: folder, Text: "this is a link to another place", Hint: "put the folder itself here; links are not followed"}
}

// read gives the bytes of a real file, up to a size.
func read(fsys fs.FS, name string, size int) ([]byte, *diag.Diagnostic) {
	file, problem := open(fsys, name)
	if problem != nil {
		return nil, problem
	}
	defer file.Close()
	var data bytes.Buffer
	if info, err := file.Stat(); err == nil {
		data.Grow(int(min(info.Size(), int64(size))) + bytes.MinRead)
	}
	if _, err := data.ReadFrom(io.LimitReader(file, int64(size)+1)); err != nil {
		return nil, &diag.Diagnostic{Text: "the file cannot be read: " + Reason(err)}
	}
	if data.Len() > size {
		return nil, &diag.Diagnostic{Text: fmt.Sprintf("the file is larger than %d MB", size>>20), Hint: "ours are a few pages of text; is this another file?"}
	}
	return data.Bytes(), nil
}

// open opens a real file.
func open(fsys fs.FS, name string) (fs.File, *diag.Diagnostic) {
	info, err := fs.Lstat(fsys, name) // Stat would open a pipe, and wait
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, &diag.Diagnostic{Text: "the file is missing"}
	case err != nil:
		return nil, &diag.Diagnostic{Text: "the file cannot be read: " + Reason(err)}
	case info.Mode()&fs.ModeSymlink != 0:
		return nil, &diag.Diagnostic{Text: "this is a link to another place", Hint: "put the file itself here; links are not followed"}
	case !info.Mode().IsRegular():
		return nil, &diag.Diagnostic{Text: "this is not a file", Hint: "take it away, or put a text file of this name in its place"}
	}
	file, err := fsys.Open(name)
	if err != nil {
		return nil, &diag.Diagnostic{Text: "the file cannot be read: " + Reason(err)}
	}
	return file, nil
}

const saveAsUTF8 = `choose "UTF-8" where your editor asks for the encoding, and save it again`

// plain makes sure that the bytes are text, as computers of all kinds write it.
func plain(data []byte) ([]byte, *diag.Diagnostic) {
	switch {
	case bytes.HasPrefix(data, []byte("\xff\xfe")), bytes.HasPrefix(data, []byte("\xfe\xff")):
		return nil, &diag.Diagnostic{Text: "the file is saved as UTF-16, not as plain UTF-8 text", Hint: saveAsUTF8}
	case bytes.IndexByte(data, 0) >= 0:
		return nil, &diag.Diagnostic{Text: "this is not a text file", Hint: "word processors keep more than text in their files; save it as plain text"}
	case bytes.HasPrefix(data, []byte(`{\rtf`)):
		return nil, &diag.Diagnostic{Line: 1, Text: "this is not a plain text file", Hint: "word processors keep more than text in their files; save it as plain text (in TextEdit: Format, Make Plain Text)"}
	}
	data = bytes.TrimPrefix(data, []byte("\xef\xbb\xbf"))
	if bytes.IndexByte(data, '\r') >= 0 {
		data = bytes.ReplaceAll(data, []byte("\r\n"), []byte("\n"))
		data = bytes.ReplaceAll(data, []byte("\r"), []byte("\n"))
	}
	if at := badUTF8(data); at >= 0 {
		return nil, &diag.Diagnostic{Line: 1 + bytes.Count(data[:at], []byte("\n")), Text: "a letter here is not saved as UTF-8", Hint: saveAsUTF8}
	}
	return data, nil
}

// badUTF8 is where the first byte stands that is not part of a letter; -1 for
// none.
func badUTF8(data []byte) int {
	if utf8.Valid(data) {
		return -1
	}
	for at := 0; ; {
		c, size := utf8.DecodeRune(data[at:])
		if c == utf8.RuneError && size == 1 {
			return at
		}
		at += size
	}
}

// Reason is what an error of the disk says without the path in front.
func Reason(err error) string {
	var at *fs.PathError
	if errors.As(err, &at) {
		return at.Err.Error()
	}
	return err.Error()
}
