package main

import (
	"bytes"
	"io"
	"strings"
	"testing"

	"github.com/spf13/cobra"
)

// Every command says its own text, and every text has its command.
func TestEveryCommandHasHelp(t *testing.T) {
	texts, err := helpTexts.ReadDir("help")
	if err != nil {
		t.Fatal(err)
	}
	said := 0
	var look func(cmd *cobra.Command)
	look = func(cmd *cobra.Command) {
		if cmd.Name() == "completion" {
			return // cobra's own words
		}
		for _, sub := range cmd.Commands() {
			look(sub)
		}
		if cmd.Long != "" { // not out of a file
			return
		}
		said++
		text, _ := helpOf(cmd)
		var out bytes.Buffer
		typed := append(strings.Fields(cmd.CommandPath())[1:], "--help")
		if code := testStreams(&out, io.Discard).run(typed); code != exitFine || text == "" || !strings.HasPrefix(out.String(), text) {
			t.Errorf("%v: exit code %d, %.80q", typed, code, out.String())
		}
		if strings.Contains(text, "{folder}") || strings.Contains(text, "{example}") {
			t.Errorf("%v: %q", typed, text)
		}
	}
	look(newRootCmd(testStreams(io.Discard, io.Discard)))
	if said != len(texts) {
		t.Errorf("%d texts for %d commands", len(texts), said)
	}
}
