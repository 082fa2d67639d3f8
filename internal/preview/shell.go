package preview

import (
	"crypto/sha256"
	_ "embed"
	"encoding/base64"
	"strings"
)

var (
	//go:embed shell.html
	shellHTML string
	//go:embed shell.css
	shellCSS string
	//go:embed shell.js
	shellJS string
)

// shell is the page around the site's pages. It is the only one with a script,
// and that one is named by its hash (Content Security Policy Level 3).
type shell struct {
	html   []byte
	policy string
}

func newShell() shell {
	html := strings.NewReplacer("/* style */", shellCSS, "/* script */", shellJS).Replace(shellHTML)
	return shell{
		html: []byte(html),
		policy: "default-src 'none'; style-src '" + hash(shellCSS) + "'; script-src '" + hash(shellJS) +
			"'; connect-src 'self'; img-src data:; frame-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
	}
}

func hash(text string) string {
	sum := sha256.Sum256([]byte(text))
	return "sha256-" + base64.StdEncoding.EncodeToString(sum[:])
}
