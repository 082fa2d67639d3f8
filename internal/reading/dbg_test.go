package reading

import (
	"fmt"
	"os"
	"testing"
)

func TestDbg(t *testing.T) {
	tag, story := os.Getenv("TAG"), os.Getenv("STORY")
	if story == "" {
		t.Skip()
	}
	r := NewReader(tag, numberWords(tag))
	x, _ := r.Mark(story)
	s := &scene{r: r, names: map[string]bool{}}
	d := decider{r: r, text: x, ask: asks{goal: -1}}
	for _, tokens := range r.sentences(x) {
		n := len(d.facts)
		d.sentence(s, tokens)
		fmt.Println(lows(tokens))
		for _, f := range d.facts[n:] {
			fmt.Printf("   %+v\n", f)
		}
	}
	fmt.Printf("%+v\n", d.ask)
	fmt.Println(d.decide(s), s.people, s.owners, s.doubt, s.lost, d.unclear, d.doubts)
}
