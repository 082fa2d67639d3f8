package page

import (
	"crypto/sha256"
	"fmt"
	"io/fs"
	"strings"

	"github.com/tdewolff/minify/v2"
	mincss "github.com/tdewolff/minify/v2/css"

	"homebuild/internal/diag"
	"homebuild/internal/picture/svg"
	"homebuild/internal/textfile"
	"homebuild/internal/tomlfile"
)

// Palette is a look's name and colors.
type Palette struct {
	Name  string
	Light map[string]string // colour by name, "#rrggbb"
	Dark  map[string]string
}

// Theme is a look, ready to stand in pages. Make one with ReadTheme.
type Theme struct {
	Palette
	styles map[*kind]style
	sum    string
	// What is the same in every page is drawn once: the fills of the pictures,
	// and the cards.
	patterns string
	deck     deck
}

// colours are the names that a colours.toml gives a value, in the order in
// which they are written to the page.
var colours = []string{
	"paper", "sheet", "ink", "soft", "line",
	"first", "second", "third", "first-wash", "second-wash", "third-wash",
}

// ReadPalette reads the colours.toml of a theme's folder. The error is
// diag.Diagnostics, whose file is named as in the folder.
func ReadPalette(theme fs.FS) (Palette, error) {
	text, problem := textfile.Read(theme, "colours.toml")
	if problem != nil {
		return Palette{}, diag.Diagnostics{*problem}
	}
	file := tomlfile.Parse("colours.toml", text, 1)
	file.Example = `settings look like ink = "#1f5c85"`
	s := file.Section()
	p := Palette{Name: s.Word("name"), Light: palette(s, "light"), Dark: palette(s, "dark")}
	if problems := file.Problems(); len(problems) > 0 {
		return Palette{}, problems
	}
	return p, nil
}

// ReadTheme reads a theme: base is the shared layout, theme the folder with
// colours.toml and, if it wishes, theme.css. Files may come from strangers: CSS
// that could leave the <style> element or ask for a file is refused. The error
// is diag.Diagnostics, whose files are named as in the folder.
func ReadTheme(base, theme fs.FS) (*Theme, error) {
	colors, err := ReadPalette(theme)
	if err != nil {
		return nil, err
	}
	t := &Theme{Palette: colors, styles: map[*kind]style{}}
	css := stylesheets{base: base, theme: theme, read: map[string]string{}}
	for _, k := range kinds {
		var problem *diag.Diagnostic
		if t.styles[k], problem = css.join(t.colors(), k); problem != nil {
			return nil, diag.Diagnostics{*problem}
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

// palette reads a table of colours.
func palette(s *tomlfile.Section, key string) map[string]string {
	table := s.Section(key, "the colours of ["+key+"]")
	if !table.Written {
		if !s.Has(key) {
			s.Add(key, "the theme has no colours for "+key, fmt.Sprintf("write [%s] on a line, and its colours below", key))
		}
		return nil
	}
	values := map[string]string{}
	for _, name := range colours {
		switch values[name] = table.Word(name); {
		case !table.Has(name):
			table.Add(name, fmt.Sprintf("[%s] has no %s", key, name), fmt.Sprintf("write %s = \"#1f5c85\", or another colour, below [%s]", name, key))
		case values[name] != "" && !hex(values[name]):
			table.Add(name, fmt.Sprintf("%s.%s is %q", key, name, values[name]), `write a colour such as "#1f5c85"`)
		}
	}
	return values
}

// colors are the custom properties of a page, in light and in the dark.
func (p Palette) colors() string {
	return ":root{" + properties(p.Light) + "}@media screen and (prefers-color-scheme:dark){:root{" + properties(p.Dark) + "}}"
}

// PictureStyle is the CSS of pictures, with the look's colors, for a page that is
// not one of ours.
func (p Palette) PictureStyle() string { return p.colors() + svg.Style() }

// properties writes colours as custom properties.
func properties(values map[string]string) string {
	var b strings.Builder
	for _, name := range colours {
		fmt.Fprintf(&b, "--%s:%s;", name, values[name])
	}
	return b.String()
}

func hex(s string) bool {
	return len(s) == 7 && s[0] == '#' && strings.Trim(s[1:], "0123456789abcdefABCDEF") == ""
}

// stylesheets are the CSS files of a theme; several kinds of pages share one.
type stylesheets struct {
	base, theme fs.FS
	read        map[string]string // by name, ready to stand in a page
}

// ofTheme is the file of the theme's own; base has none of its name.
const ofTheme = "theme.css"

// file reads one of the files, once for all kinds.
func (s stylesheets) file(name string) (string, *diag.Diagnostic) {
	if css, ok := s.read[name]; ok {
		return css, nil
	}
	from := s.base
	if name == ofTheme {
		from = s.theme
	}
	css, problem := readCSS(from, name)
	s.read[name] = css
	return css, problem
}

// join puts the CSS of one kind of page together.
func (s stylesheets) join(start string, k *kind) (style, *diag.Diagnostic) {
	var b strings.Builder
	b.WriteString(start)
	for _, name := range k.css {
		css, problem := made(name), (*diag.Diagnostic)(nil)
		if css == "" {
			css, problem = s.file(name)
		}
		if problem != nil {
			return style{}, problem
		}
		if class := scoped[name]; class != "" && k == wholeKind {
			var err error
			if css, err = scope(css, class); err != nil {
				return style{}, &diag.Diagnostic{File: name, Text: err.Error()}
			}
		}
		b.WriteString(css)
	}
	if !textfile.IsMissing(s.theme, ofTheme) {
		css, problem := s.file(ofTheme)
		if problem != nil {
			return style{}, problem
		}
		b.WriteString(css)
	}
	return newStyle(b.String()), nil
}

// readCSS reads, checks and shortens a file.
func readCSS(files fs.FS, name string) (string, *diag.Diagnostic) {
	css, problem := textfile.Read(files, name)
	if problem == nil {
		problem = checkCSS(name, css)
	}
	if problem != nil {
		return "", problem
	}
	m := minify.New()
	m.AddFunc("text/css", mincss.Minify)
	short, err := m.String("text/css", css)
	if err != nil {
		return "", &diag.Diagnostic{File: name, Text: err.Error()}
	}
	// Shortening leaves comments out, which might bring a word together.
	return short, checkCSS(name, short)
}
