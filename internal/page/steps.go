package page

// Steps is the page of stories beside a week's own: easier ones and harder ones,
// each under a heading that a link leads to.
type Steps struct {
	WeekPage
	Rungs []Rung
}

// Rung is the stories on a rung of the week's ladder.
type Rung struct {
	Words   RungWords
	First   int // number of the first story
	Stories []*TryStory
}

// RungWords are the id that links lead to, and message ids.
type RungWords struct{ ID, Title, Lead, Link string }

// The words of the stories beside the week's own.
var (
	SmallerSteps = RungWords{"smaller", "try.easier.title", "try.easier.lead", "try.easier.link"}
	BiggerSteps  = RungWords{"bigger", "try.harder.title", "try.harder.lead", "try.harder.link"}
)

// scenes are all that the page draws.
func (v *Steps) scenes() (all []Scene) {
	for _, t := range v.all() {
		all = append(all, t.Scene)
	}
	return all
}

// all are the stories of all rungs.
func (v *Steps) all() (stories []*TryStory) {
	for _, r := range v.Rungs {
		stories = append(stories, r.Stories...)
	}
	return stories
}
