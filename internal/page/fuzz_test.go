package page

import (
	"io/fs"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"golang.org/x/net/html"

	"homebuild/themes"
)

// noteElements are the elements of a note and the attributes they may have.
var noteElements = map[string][]string{
	"p": nil, "em": nil, "strong": nil, "ul": nil, "ol": {"start"}, "li": nil, "br": nil, "hr": nil,
	"blockquote": nil, "code": {"class"}, "pre": nil, "a": {"href", "title"},
}

// Whatever a note holds, what is written is a few quiet elements and links to
// https addresses.
func FuzzNote(f *testing.F) {
	for _, seed := range []string{
		"Dear families,\n\n- *one*\n- **two**", "# Title\n\nx\n===", "![x](https://a.example/x.png)", "[x](javascript:alert(1))",
		"[x](https://a.example \"t\")", "<script>alert(1)</script>", "<https://a.example/>", "<javascript:x>", "[x]: data:text/html,x\n[x]",
		"`<b>`\n\n    <i>", "[a](<https://a.example/\" onclick=\"x>)", "&lt;b&gt; &#60;", "> > > > >\n\n1. 2. 3.", "a\\\nb  \nc", "\x00\xff\u202e",
		"``` \"><script>\nx\n```", "[![x](https://a.example/i.png)](https://a.example/)", "[a\n# b](https://x.example)", "* * *\n***\n",
	} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, markdown string) {
		var b strings.Builder
		if err := note(markdown).Render(t.Context(), &b); err != nil {
			t.Fatal(err)
		}
		checkNote(t, b.String())
	})
}

func checkNote(t *testing.T, written string) {
	t.Helper()
	tokens := html.NewTokenizer(strings.NewReader(written))
	for {
		switch tokens.Next() {
		case html.ErrorToken:
			return
		case html.CommentToken, html.DoctypeToken:
			if raw := string(tokens.Raw()); raw != "<!-- raw HTML omitted -->" {
				t.Errorf("a note holds %q", raw)
			}
		case html.StartTagToken, html.SelfClosingTagToken:
			token := tokens.Token()
			allowed, ok := noteElements[token.Data]
			if !ok {
				t.Errorf("a note holds <%s>", token.Data)
			}
			for _, a := range token.Attr {
				if !slices.Contains(allowed, a.Key) {
					t.Errorf("a note holds <%s %s>", token.Data, a.Key)
				}
				if a.Key == "href" && !strings.HasPrefix(a.Val, "https://") {
					t.Errorf("a note links to %q", a.Val)
				}
			}
		}
	}
}

var quoted = regexp.MustCompile(`"[^"]*"|'[^']*'`)

// Whatever a theme's CSS holds, it is refused or can neither leave the <style>
// element nor ask for a file.
func FuzzThemeCSS(f *testing.F) {
	for _, css := range []string{
		"", readTheme(f, "paper/theme.css"), "a{background:url(x)}", "@import 'x';", "</style><script>", `\75rl(x)`, "a{b:image-set('x' 1x)}",
		"/* </style> */", "a{content:'url(x)'}", "@media x{", "a{b:URL( x )}", "a{--x:url(x)}", "@\u0131mport 'x'", "\x00\xff", "a{b:u/**/rl(x)}", "@font-face{src:local(x)}",
	} {
		f.Add(css)
	}
	f.Fuzz(func(t *testing.T, css string) {
		short, err := readCSS(fstest.MapFS{"theme.css": {Data: []byte(css)}}, "theme.css")
		if err == nil {
			checkStyle(t, short)
		}
	})
}

// Whatever a colours.toml holds, it is refused or gives colors alone.
func FuzzThemeColors(f *testing.F) {
	toml := readTheme(f, "paper/colours.toml")
	for _, text := range []string{
		toml, "", "name = 1", strings.Replace(toml, "#f4ecdd", "red;}</style>", 1), strings.Replace(toml, "#f4ecdd", "#f4ecd;", 1),
		strings.Replace(toml, "[light]", "[light]\nx = \"#000000\"", 1), toml + "[light]\n", "\xff",
	} {
		f.Add(text)
	}
	base := fstest.MapFS{}
	for _, k := range kinds {
		for _, name := range k.css {
			base[name] = &fstest.MapFile{}
		}
	}
	f.Fuzz(func(t *testing.T, text string) {
		theme, err := ReadTheme(base, fstest.MapFS{"colours.toml": {Data: []byte(text)}})
		if err != nil {
			return
		}
		css := theme.styles[indexKind].css
		checkStyle(t, css)
		frame := strings.NewReplacer("@media screen and (prefers-color-scheme:dark){", "", ":root{", "", "}", "")
		if rest := frame.Replace(oneColor.ReplaceAllString(css, "")); rest != "" {
			t.Errorf("a theme's colors write %q", rest)
		}
	})
}

var oneColor = regexp.MustCompile(`--[a-z-]+:#[0-9A-Fa-f]{6};`)

func checkStyle(t *testing.T, css string) {
	t.Helper()
	bare := strings.ToLower(quoted.ReplaceAllString(css, `""`))
	for _, no := range []string{"<", `\`, "url(", "@import", "@font-face", "@namespace", "image-set(", "src(", "expression("} {
		if strings.Contains(bare, no) {
			t.Errorf("the style holds %q", no)
		}
	}
}

func readTheme(tb testing.TB, name string) string {
	tb.Helper()
	data, err := fs.ReadFile(themes.Files, name)
	if err != nil {
		tb.Fatal(err)
	}
	return string(data)
}
