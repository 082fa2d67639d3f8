package page

import (
	"bytes"
	"crypto/sha256"
	"errors"
	"fmt"
	"io/fs"
	"slices"
	"strings"

	"github.com/pelletier/go-toml/v2"
	"github.com/tdewolff/minify/v2"
	mincss "github.com/tdewolff/minify/v2/css"

	"homebuild/internal/picture/svg"
)

// Theme is a look, ready to stand in pages. Make one with ReadTheme.
type Theme struct {
	Name   string
	Light  map[string]string // colour by name, "#rrggbb"
	Dark   map[string]string
	styles map[*kind]style
	sum    string
	// What is the same in every page is drawn once: the fills of the pictures,
	// and the cards.
	patterns string
	deck     deck
}

// ErrTheme says that a theme's files cannot be used; the text names the file
// and what to write.
var ErrTheme = errors.New("theme cannot be used")

// colours are the names that a theme.toml gives a value, in the order in
// which they are written to the page.
var colours = []string{
	"paper", "sheet", "ink", "soft", "line",
	"first", "second", "third", "first-wash", "second-wash", "third-wash",
}

// ReadTheme reads a theme: base is the shared layout, theme the folder with
// theme.toml and, if it wishes, theme.css. Files may come from strangers: CSS
// that could leave the <style> element or ask for a file is refused. The error
// wraps ErrTheme.
func ReadTheme(base, theme fs.FS) (*Theme, error) {
	raw, err := readLimited(theme, "theme.toml")
	if err != nil {
		return nil, err
	}
	var file struct {
		Name        string
		Light, Dark map[string]string
	}
	if err := toml.NewDecoder(bytes.NewReader(raw)).DisallowUnknownFields().Decode(&file); err != nil {
		return nil, fmt.Errorf("%w: theme.toml: %w", ErrTheme, err)
	}
	light, err := properties("light", file.Light)
	if err != nil {
		return nil, err
	}
	dark, err := properties("dark", file.Dark)
	if err != nil {
		return nil, err
	}
	t := &Theme{Name: file.Name, Light: file.Light, Dark: file.Dark, styles: map[*kind]style{}}
	start := ":root{" + light + "}@media screen and (prefers-color-scheme:dark){:root{" + dark + "}}"
	for _, k := range kinds {
		if t.styles[k], err = join(start, base, theme, k.css); err != nil {
			return nil, err
		}
	}
	t.sum = t.sumOfStyles()
	t.patterns = svg.Defs()
	if t.deck, err = newDeck(); err != nil {
		return nil, err
	}
	return t, nil
}

// Sum names the look: two themes with one sum make the same pages. The
// pictures are the program's own.
func (t *Theme) Sum() string { return t.sum }

func (t *Theme) sumOfStyles() string {
	sum := sha256.New()
	for _, k := range kinds {
		fmt.Fprintf(sum, "%s %s\n", k.class, t.styles[k].hash)
	}
	return fmt.Sprintf("%x", sum.Sum(nil))
}

// properties writes a table of colours as custom properties.
func properties(table string, values map[string]string) (string, error) {
	var b strings.Builder
	for name := range values {
		if !slices.Contains(colours, name) {
			return "", fmt.Errorf("%w: theme.toml: [%s] %s is not a colour of ours; they are %s", ErrTheme, table, name, strings.Join(colours, ", "))
		}
	}
	for _, name := range colours {
		if !hex(values[name]) {
			return "", fmt.Errorf("%w: theme.toml: [%s] %s = %q; write a colour such as \"#1f5c85\"", ErrTheme, table, name, values[name])
		}
		fmt.Fprintf(&b, "--%s:%s;", name, values[name])
	}
	return b.String(), nil
}

func hex(s string) bool {
	return len(s) == 7 && s[0] == '#' && strings.Trim(s[1:], "0123456789abcdefABCDEF") == ""
}

// join puts the CSS of one kind of page together.
func join(start string, base, theme fs.FS, files []string) (style, error) {
	var b strings.Builder
	b.WriteString(start)
	for _, name := range files {
		if css := made(name); css != "" {
			b.WriteString(css)
			continue
		}
		css, err := readCSS(base, name)
		if err != nil {
			return style{}, err
		}
		b.WriteString(css)
	}
	css, err := readCSS(theme, "theme.css")
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return style{}, err
	}
	b.WriteString(css)
	return newStyle(b.String()), nil
}

// readCSS reads, checks and shortens a file.
func readCSS(files fs.FS, name string) (string, error) {
	raw, err := readLimited(files, name)
	if err != nil {
		return "", err
	}
	if err := checkCSS(name, raw); err != nil {
		return "", err
	}
	m := minify.New()
	m.AddFunc("text/css", mincss.Minify)
	short, err := m.Bytes("text/css", raw)
	if err != nil {
		return "", fmt.Errorf("%w: %s: %w", ErrTheme, name, err)
	}
	// Shortening leaves comments out, which might bring a word together.
	return string(short), checkCSS(name, short)
}

// readLimited reads a real file, and no more of it than a theme may have.
func readLimited(files fs.FS, name string) ([]byte, error) {
	info, err := fs.Lstat(files, name) // Stat would open a pipe, and wait
	if err != nil {
		return nil, fmt.Errorf("%w: %w", ErrTheme, err)
	}
	if !info.Mode().IsRegular() || info.Size() > largestFile {
		return nil, fmt.Errorf("%w: %s is not a file of at most %d bytes", ErrTheme, name, largestFile)
	}
	raw, err := fs.ReadFile(files, name)
	if err != nil {
		return nil, fmt.Errorf("%w: %w", ErrTheme, err)
	}
	return raw, nil
}

const largestFile = 1 << 20
