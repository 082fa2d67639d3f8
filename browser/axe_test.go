//go:build browser

package browser_test

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"
)

// axeResult is what axe-core says about a page.
type axeResult struct {
	Rule   string   `json:"rule"`
	Help   string   `json:"help"`
	Places []string `json:"places"`
}

// No page breaks a rule of axe-core 4.14, which tests for WCAG 2.2 A and AA and
// for best practice: every kind of page, in every language, light and dark.
func TestAccessibilityEngine(t *testing.T) {
	t.Parallel()
	source, err := os.ReadFile("node_modules/axe-core/axe.min.js")
	if err != nil {
		t.Fatalf("%v; sh browser/setup.sh installs it", err)
	}
	inEachLanguage(t, func(b *tab, views []view) {
		if !*all && strings.HasSuffix(b.t.Name(), "/zh-Hans") {
			return // no rule looks at the script: a quick run reads one language in each direction
		}
		b.trusted()
		for _, v := range views {
			b.scheme("light")
			b.open(v)
			eval[bool](b, string(source)+";true")
			found := b.axe()
			b.scheme("dark") // changes colors alone
			for _, r := range append(found, b.axe("color-contrast")...) {
				b.t.Errorf("%s: %s: %s: %s", v.name, r.Rule, r.Help, strings.Join(r.Places, " | "))
			}
		}
	})
}

// axe runs the named rules, or all of them.
func (b *tab) axe(rules ...string) []axeResult {
	only := ""
	if len(rules) > 0 {
		only = ", runOnly: " + quoted(strings.Join(rules, " ")) + `.split(" ")`
	}
	js := `axe.run(document, {resultTypes: ["violations"]` + only + `}).then(r => r.violations.map(v => (
		{rule: v.id, help: v.help, places: v.nodes.slice(0, 4).map(n => n.html.slice(0, 160) + " " + n.any.map(a => a.message).join("; ").slice(0, 200))})))`
	ctx, cancel := ofSeconds(b.ctx, 60)
	defer cancel()
	out, err := chromedp.Run(ctx, chromedp.Evaluate[[]axeResult](js, chromedp.EvalAwaitPromise))
	if err != nil {
		b.t.Fatal(err)
	}
	return out
}

// The engine finds what is wrong: a picture without a name, faint text.
func TestAccessibilityEngineFinds(t *testing.T) {
	t.Parallel()
	source, err := os.ReadFile("node_modules/axe-core/axe.min.js")
	if err != nil {
		t.Fatal(err)
	}
	b := openTab(t)
	b.trusted()
	b.visit(file("en/" + week + ".html"))
	eval[bool](b, `document.querySelector("h1").style.color = "#ddd"; document.querySelector(".mark").innerHTML = ""; true`)
	eval[bool](b, string(source)+";true")
	found := fmt.Sprint(b.axe())
	for _, rule := range []string{"color-contrast", "link-name"} {
		if !strings.Contains(found, rule) {
			t.Errorf("the engine does not find the planted fault %s: %s", rule, found)
		}
	}
	b.scheme("dark")
	eval[bool](b, `document.querySelector("h1").style.color = "#444"; true`)
	if found := fmt.Sprint(b.axe("color-contrast")); !strings.Contains(found, "color-contrast") {
		t.Errorf("the engine does not find what is faint in the dark: %s", found)
	}
}
