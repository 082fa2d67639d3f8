// Package output has the one type that rooms hand on from those that make files
// to those that write or show them.
package output

// File is a file that is not rendered yet, so that memory does not grow with the
// size of a site.
type File struct {
	Path   string                 // slash separated, within the folder it is made for
	Render func() ([]byte, error) // pure: any number of calls, on any goroutine
	// Append makes the same bytes behind those that it is given, so that who makes many
	// files needs the room of one; nil where the bytes are there already.
	Append func([]byte) ([]byte, error)
	Index  bool // leads to other files, and so is published after them
	// Key names everything that the bytes depend on: files of one path and key
	// have the same bytes. Empty when that is not known.
	Key string
}

// Text is a file with these words.
func Text(path, text string) File {
	return File{Path: path, Render: func() ([]byte, error) { return []byte(text), nil }}
}
