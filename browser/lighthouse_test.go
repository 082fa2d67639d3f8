//go:build browser

package browser_test

import (
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
)

// TestLighthouse asks Lighthouse 12 for its figures as on a mobile phone. Only
// accessibility and best practices are wanted whole: performance wanders on a
// busy machine, and pages that ask search engines to stay away lose points for
// that.
func TestLighthouse(t *testing.T) {
	if !*lighthouse {
		t.Skip("takes minutes; ask for it with -lighthouse")
	}
	for _, tag := range []string{"en", "ar"} {
		for _, v := range views(tag)[:9] {
			report := lighthouseOf(t, server.URL+"/"+v.path)
			t.Logf("%-14s performance %3.0f  accessibility %3.0f  best practices %3.0f  search %3.0f  first paint %4.0f ms  largest %4.0f ms  blocked %3.0f ms  shift %.3f  %6.0f bytes",
				tag+"/"+v.name, report.score("performance"), report.score("accessibility"), report.score("best-practices"), report.score("seo"),
				report.number("first-contentful-paint"), report.number("largest-contentful-paint"), report.number("total-blocking-time"),
				report.number("cumulative-layout-shift"), report.number("total-byte-weight"))
			for _, category := range []string{"accessibility", "best-practices"} {
				if report.score(category) < 100 {
					t.Errorf("%s/%s: %s %.0f, want 100: %v", tag, v.name, category, report.score(category), report.failed(category))
				}
			}
		}
	}
}

// lighthouseReport is the part of Lighthouse's JSON that is shown.
type lighthouseReport struct {
	Categories map[string]struct {
		Score     float64
		AuditRefs []struct {
			ID     string
			Weight float64
		}
	}
	Audits map[string]struct {
		Score        *float64
		NumericValue float64
	}
}

func (r lighthouseReport) score(category string) float64 { return 100 * r.Categories[category].Score }

func (r lighthouseReport) number(audit string) float64 { return r.Audits[audit].NumericValue }

// failed lists the audits that cost a category points.
func (r lighthouseReport) failed(category string) []string {
	var out []string
	for _, ref := range r.Categories[category].AuditRefs {
		if s := r.Audits[ref.ID].Score; s != nil && *s < 1 && ref.Weight > 0 {
			out = append(out, ref.ID)
		}
	}
	return out
}

func lighthouseOf(t *testing.T, url string) lighthouseReport {
	t.Helper()
	to := filepath.Join(t.TempDir(), "report.json")
	cmd := exec.Command("node", "node_modules/lighthouse/cli/index.js", url, "--quiet", "--output=json", "--output-path="+to,
		"--chrome-flags=--headless=new --no-sandbox --disable-gpu --disable-background-networking --disable-component-update --disable-sync")
	if out, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%s: %v: %s", url, err, out)
	}
	raw, err := os.ReadFile(to)
	if err != nil {
		t.Fatal(err)
	}
	var report lighthouseReport
	if err := json.Unmarshal(raw, &report); err != nil {
		t.Fatal(err)
	}
	return report
}
