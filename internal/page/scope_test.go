package page

import "testing"

// Every selector finds only what stands in the part; the page's main is the part.
func TestScope(t *testing.T) {
	for css, want := range map[string]string{
		".a,.b c{x:y}":                                         ".p .a,.p .b c{x:y;}",
		"main>h1{x:y}":                                         ".p>h1{x:y;}",
		"main:has(.a,.b) :is(.c,.d){x:y}":                      ".p:has(.a,.b) :is(.c,.d){x:y;}",
		"body:has(.a) .foot{x:y}":                              "body:has(.a) .foot{x:y;}",
		"@media print{.a{x:y}@page{margin:1mm}}":               "@media print{.p .a{x:y;}@page{margin:1mm;}}",
		"@media(max-width:9rem){label,input{x:1px solid red}}": "@media(max-width:9rem){.p label,.p input{x:1px solid red;}}",
	} {
		if got, err := scope(css, "p"); got != want || err != nil {
			t.Errorf("%s: want %s, got %s, %v", css, want, got, err)
		}
	}
}
