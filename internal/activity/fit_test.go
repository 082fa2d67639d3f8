package activity

import (
	"slices"
	"testing"

	"homebuild/internal/picture"
	"homebuild/internal/strategy"
)

// had is how many weeks a class had about a target by a way.
type had struct {
	weeks  int
	target string
	focus  strategy.Name
}

// The ways of a target lead in turn: where all help with as many stories, one that the
// target had comes after the others, and one that led four of the last eighteen weeks
// after all; but a teacher who asks for one has it. Half of the stories are enough for
// another to lead in the place of one that led so often.
func TestWaysLeadInTurn(t *testing.T) {
	const subtract, add = "subtract-past-ten-within-20", "add-past-ten-within-20"
	const bridge, think, ten = strategy.BridgeBack, strategy.ThinkAddition, strategy.MakeTen
	for _, row := range []struct {
		name    string
		earlier []had // from the first week on
		asked   strategy.Name
		ways    []strategy.Name // that the target is good for; those of the list where there is none
		want    strategy.Name
	}{
		{"the first of the list", nil, 0, nil, bridge},
		{"the target had the first", []had{{1, subtract, bridge}}, 0, nil, think},
		{"the target had both", []had{{1, subtract, bridge}, {1, subtract, think}}, 0, nil, bridge},
		{"the target had the second more often", []had{{1, subtract, bridge}, {2, subtract, think}}, 0, nil, bridge},
		{"another target had the first", []had{{1, "subtract-within-20", bridge}}, 0, nil, bridge},
		{"asked for", nil, think, nil, think},
		{"asked for again", []had{{1, subtract, think}}, think, nil, think},
		{"asked for once more than its share", []had{{4, subtract, think}}, think, nil, think},
		{"three weeks of eighteen", []had{{3, "subtract-within-20", bridge}}, 0, nil, bridge},
		{"four weeks of eighteen", []had{{4, "subtract-within-20", bridge}}, 0, nil, think},
		{"the fourth is the seventeenth before", []had{{4, "subtract-within-20", bridge}, {13, add, ten}}, 0, nil, think},
		{"the fourth is the eighteenth before", []had{{4, "subtract-within-20", bridge}, {14, add, ten}}, 0, nil, bridge},
		{"both had their share", []had{{4, "subtract-within-20", bridge}, {4, "subtract-within-20", think}}, 0, nil, bridge},
		{"one had its share, the other nearly", []had{{4, "subtract-within-20", bridge}, {3, "subtract-within-20", think}}, 0, nil, think},
		{"no other helps", []had{{4, "subtract-within-20", bridge}}, 0, []strategy.Name{ten, bridge}, bridge},
		{"more than its share, and no other helps", []had{{9, "subtract-within-20", bridge}}, 0, []strategy.Name{bridge, ten}, bridge},
	} {
		r := Request{Key: "puddle", Target: named(t, subtract), Focus: row.asked, Stories: 4}
		if row.ways != nil {
			r.Target.Strategies = row.ways
		}
		var earlier []Request
		for _, h := range row.earlier {
			for range h.weeks {
				earlier = append(earlier, Request{Week: monday(len(earlier)), Key: "puddle", Target: named(t, h.target), Focus: h.focus, Stories: 1})
			}
		}
		r.Week = monday(len(earlier))
		year := slices.Clone(earlier)
		for _, at := range []int{len(earlier), 50} { // the week as it was, and one long after it: neither comes before
			year = append(year, Request{Week: monday(at), Key: "puddle", Target: r.Target, Focus: row.want, Stories: 1})
		}
		if got, helps, stories := new(Planner).BestFocus(year, r); got != row.want || helps != 5 || stories != 5 {
			t.Errorf("%s: %v helps with %d of %d stories, want %v with all 5", row.name, got, helps, stories, row.want)
		}
	}
}

// The way that helps with the most stories leads; once it has had its share, the first
// other that helps with half of them does.
func TestWhatHelpsMostLeads(t *testing.T) {
	const most = strategy.TenAndMore // helps with every story of both targets
	for _, row := range []struct {
		target  string
		stories int
		ways    []strategy.Name
		led     int // weeks that the most helpful way led
		want    strategy.Name
	}{
		{"compare-within-20", 4, []strategy.Name{strategy.ThinkAddition, most}, 0, most},
		{"compare-within-20", 4, []strategy.Name{strategy.ThinkAddition, most}, 4, strategy.ThinkAddition}, // 4 of 5
		{"compare-within-20", 4, []strategy.Name{strategy.MakeTen, most}, 4, most},                         // 1 of 5
		{"more-and-fewer-within-20", 5, []strategy.Name{strategy.MakeTen, most}, 4, strategy.MakeTen},      // 3 of 6
	} {
		var earlier []Request
		for i := range row.led {
			earlier = append(earlier, Request{Week: monday(i), Key: "puddle", Target: named(t, "ten-and-more-within-20"), Focus: most, Stories: 1})
		}
		r := Request{Week: monday(row.led), Key: "puddle", Target: named(t, row.target), Stories: row.stories}
		r.Target.Strategies = row.ways
		if got, _, _ := new(Planner).BestFocus(earlier, r); got != row.want {
			t.Errorf("%s with %d stories, after %d weeks by %v: %v leads, want %v", row.target, row.stories, row.led, most, got, row.want)
		}
	}
}

// The picture that shows most stories leads; of those that show as many the one that is
// asked for, and else the first of the target's.
func TestBestPicture(t *testing.T) {
	const bar, line, frame = picture.BarModel, picture.NumberLine, picture.TenFrame // a ten frame compares nothing
	for _, row := range []struct {
		name   string
		target string
		of     []picture.Kind
		asked  picture.Kind
		want   picture.Kind
		shows  int
	}{
		{"the first", "add-within-20", []picture.Kind{bar, line}, 0, bar, 5},
		{"asked for", "add-within-20", []picture.Kind{bar, line}, line, line, 5},
		{"asked for, and first", "add-within-20", []picture.Kind{bar, line}, bar, bar, 5},
		{"asked for, and not the target's", "add-within-20", []picture.Kind{bar, line}, frame, bar, 5},
		{"asked for, and shows less", "compare-within-20", []picture.Kind{bar, frame}, frame, bar, 5},
		{"first, and shows less", "compare-within-20", []picture.Kind{frame, bar}, 0, bar, 5},
		{"none shows anything", "compare-within-20", []picture.Kind{frame}, frame, 0, 0},
	} {
		r := Request{Week: monday(0), Key: "puddle", Target: named(t, row.target), Picture: row.asked, Stories: 4}
		r.Target.Pictures = row.of
		if got, shows, stories := new(Planner).BestPicture(nil, r); got != row.want || shows != row.shows || stories != 5 {
			t.Errorf("%s: %v shows %d of %d stories, want %v with %d of 5", row.name, got, shows, stories, row.want, row.shows)
		}
	}
}
