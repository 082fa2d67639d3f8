package recheck

import (
	"fmt"
	"slices"
	"strings"

	"golang.org/x/net/html"
)

const (
	tryEnd   = "-try.html"
	printEnd = "-print.html"
)

// papers wants a week's sheet of paper to have the same stories as its other
// pages, and the right answers at its foot.
func (c *checker) papers() {
	for _, name := range c.paths {
		start, ok := strings.CutSuffix(name, printEnd)
		if !ok {
			continue
		}
		p, learn, try := c.pages[name], c.pages[start+".html"], c.tryPages(start)
		if learn == nil || len(try) == 0 {
			c.add(p, "the other pages of its week are missing")
			continue
		}
		want, answers := weekStories(learn, try)
		tasks := all(p.root, class("task"))
		if len(tasks) != len(want) {
			c.add(p, "it has %d stories, the other pages of the week %d", len(tasks), len(want))
			continue
		}
		for i, task := range tasks {
			if say := find(task, both(tag("p"), class("say"))); say == nil || text(say) != want[i] {
				c.add(p, "story %d on paper is not that of the other pages: %s", i+1, short(want[i]))
			}
		}
		c.paperAnswers(p, answers)
	}
}

// tryPages are the pages of stories to try: the first, and for a long week
// those that follow it.
func (c *checker) tryPages(start string) []*page {
	var out []*page
	for end := tryEnd; c.pages[start+end] != nil; end = fmt.Sprintf("-try-%d.html", len(out)+1) {
		out = append(out, c.pages[start+end])
	}
	return out
}

// weekStories are the texts of a week's stories, and their answers said in full.
func weekStories(learn *page, try []*page) (told, answers []string) {
	take := func(story, answer *html.Node) {
		if story == nil || answer == nil {
			told, answers = append(told, ""), append(answers, "")
			return
		}
		told, answers = append(told, text(story)), append(answers, text(answer))
	}
	if walk := find(learn.root, class("walk")); walk != nil {
		if say := byID(walk, "say"); say != nil {
			take(find(walk, class("again")), find(say, class("slip", "say")))
		}
	}
	for _, p := range try {
		for _, n := range all(p.root, both(tag("section"), class("story"))) {
			if found := find(n, class("found")); found != nil {
				take(find(n, both(tag("p"), class("say"))), find(found, both(tag("p"), class("say"))))
			}
		}
	}
	return told, answers
}

func (c *checker) paperAnswers(p *page, want []string) {
	foot := find(p.root, class("turned"))
	if foot == nil {
		return
	}
	var got []string
	for _, x := range children(foot, tag("span")) {
		got = append(got, text(x))
	}
	if !slices.Equal(got, want) {
		c.add(p, "the answers on paper are %s, want %s", fmt.Sprintf("%q", got), fmt.Sprintf("%q", want))
	}
}
