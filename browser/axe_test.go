//go:build browser

package browser_test

import (
	"fmt"
	"os"
	"strings"
	"sync"
	"testing"

	"github.com/chromedp/chromedp"
)

// axeResult is what axe-core says about a page.
type axeResult struct {
	Rule   string   `json:"rule"`
	Help   string   `json:"help"`
	Places []string `json:"places"`
}

// breaksNoRule wants the page to break no rule of axe-core 4.14, which tests for WCAG
// 2.2 A and AA and for best practice, light and dark.
func (b *tab) breaksNoRule(v view, dark bool) {
	b.t.Helper()
	b.withEngine()
	found := b.axe()
	if dark { // changes colors alone
		b.scheme("dark")
		found = append(found, b.axe("color-contrast")...)
		b.scheme("light")
	}
	for _, r := range found {
		b.t.Errorf("%s: %s: %s: %s", v.name, r.Rule, r.Help, strings.Join(r.Places, " | "))
	}
}

// axeCore is the source of axe-core.
var axeCore = sync.OnceValues(func() ([]byte, error) { return os.ReadFile("node_modules/axe-core/axe.min.js") })

// withEngine puts the engine into the page, where it is not there yet.
func (b *tab) withEngine() {
	b.t.Helper()
	source, err := axeCore()
	if err != nil {
		b.t.Fatalf("%v; sh browser/setup.sh installs it", err)
	}
	if !eval[bool](b, `"axe" in window`) {
		eval[bool](b, string(source)+";true")
	}
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
	b := openTab(t)
	b.visit(file("en/" + week + ".html"))
	eval[bool](b, `document.querySelector("h1").style.color = "#ddd"; document.querySelector(".mark").innerHTML = ""; true`)
	b.withEngine()
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
