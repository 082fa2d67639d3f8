// Package page is the page of the desk: its code in TypeScript, its style and its
// words, put together into one HTML file that asks for nothing from elsewhere.
//
// The code is bundled by esbuild into desk.js, which is committed, so that
// building the program needs Go alone; a test holds it against its sources.
package page

import (
	"crypto/sha256"
	_ "embed"
	"encoding/base64"
	"html"
	"strings"

	"homebuild/themes"
)

//go:generate go tool esbuild main.ts --bundle --minify --format=iife --target=es2022 --charset=utf8 --legal-comments=none --outfile=desk.js --log-level=warning

//go:embed shell.html
var shell string

//go:embed desk.css
var own string

// style is the desk's own, and the colors of the drawings of places.
func style() string {
	css, err := themes.Files.ReadFile("base/cards.css")
	if err != nil {
		panic(err) // it is embedded
	}
	return own + string(css)
}

//go:embed desk.js
var script string

// Carrying is the page with the engine inside, for opening from a file: the
// script of the worker that runs it, and the engine packed with gzip. The page
// hands {engine: "the gzip, as dense writes it"} to the worker first, and requests after it.
func Carrying(worker string, gzipped []byte) string {
	data := `<script type="text/plain" id="worker">` + escape(worker) + `</script>
<script type="text/plain" id="engine">` + dense(gzipped) + `</script>`
	return assemble("", data, "worker-src blob:; connect-src 'none'", "'wasm-unsafe-eval'")
}

// Served is the page for a server that answers requests at "call" to those who
// know the token.
func Served(token string) string {
	return assemble(`<meta name="desk-token" content="`+html.EscapeString(token)+`">`, "", "connect-src 'self'", "")
}

// assemble fills the shell. Its policy lets the one script run that is inside and
// nothing come from elsewhere. Style may stand inline, because the families' page
// in its frame brings its own; that page has a stricter policy besides.
func assemble(head, data, more, scripts string) string {
	code := escape(script)
	sum := sha256.Sum256([]byte(code))
	policy := "default-src 'none'; script-src 'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "' " + scripts +
		"; style-src 'unsafe-inline'; img-src data: blob:; base-uri 'none'; form-action 'none'; " + more
	return strings.NewReplacer(
		"{{policy}}", policy,
		"{{head}}", head,
		"{{style}}", style(),
		"{{data}}", data,
		"{{script}}", code,
	).Replace(shell)
}

// escape keeps code from ending its script element.
func escape(code string) string { return strings.ReplaceAll(code, "</script", `<\/script`) }
