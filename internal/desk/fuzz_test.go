package desk

import (
	"encoding/json"
	"strings"
	"testing"
)

// panicked reports whether a fault tells where a panic came from.
func panicked(fault string) bool { return strings.Contains(fault, "goroutine ") } // debug.Stack begins so

// Whatever stands in the files of a desk and whatever a page asks, there is an answer,
// and never a panic behind it.
func FuzzAnswer(f *testing.F) {
	const week = "target = \"add-within-20\"\n"
	for _, seed := range [][3]string{
		{week, "week", `{"date":"2026-09-14"}`}, {week + "stories = 3\n", "page", `{"date":"2026-09-14","tag":"en","part":"try"}`},
		{week, "set", `{"date":"2026-09-14","key":"note.en","value":"\"\"\"\n[x]\\"}`}, {week, "story", `{"date":"2026-09-14","number":1,"do":"numbers"}`},
		{week, "own", `{"date":"2026-09-14","text":"Lina has [8 shells]. She finds 6 more. How many now?"}`}, {week, "calendar", `{"date":"2026-09-14","do":"off"}`},
		{"[[own-story]]\ntext = \"[[[\"\n", "check", `{"date":""}`}, {"= =", "year", "null"}, {week, "openCopy", `{"data":"UEsFBg=="}`}, {week, "send", "[1]"},
		{week, "put", `{"changes":{"weeks/2026-09-14.toml":null,"../x":"y"}}`}, {week, "settings", `{"key":"languages","value":"en, xx"}`},
		{week, strings.Repeat("week", 200), "{}"},
	} {
		f.Add(seed[0], seed[1], seed[2])
	}
	d := New(nil) // opened anew each time; it has read English once
	f.Fuzz(func(t *testing.T, week, call, args string) {
		if !json.Valid([]byte(args)) || call == "site" { // all pages of a school: too slow to be asked thousands of times
			return
		}
		files := Files{"site.toml": "name = \"Quarry Hill School\"\nlanguages = [\"en\"]\n", "weeks/2026-09-14.toml": week}
		asked := []Request{{Call: "open", Args: Open{Files: files, Today: "2026-09-10", Words: "en"}}, {Call: call, Args: json.RawMessage(args)}, {Call: "year", Args: None{}}}
		for i, r := range asked {
			if reply := send(t, d, r.Call, r.Args); panicked(reply.Fault) {
				t.Errorf("%d: %s %s: %s", i, r.Call, args, reply.Fault)
			}
		}
	})
}
