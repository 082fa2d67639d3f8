package recheck_test

import (
	"fmt"
	"maps"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"homebuild/internal/recheck"
)

// Weeks in which faults are planted, by the picture they show.
const (
	farLine  = "target = \"find-the-change-within-100\"\nfocus = \"jump-up\"\npicture = \"number-line\"\n"
	nearLine = "target = \"add-within-10\"\nfocus = \"count-on\"\npicture = \"number-line\"\n"
	bars     = "target = \"add-three-within-100\"\npicture = \"bar-model\"\n"
	compare  = "target = \"find-the-difference-within-20\"\npicture = \"bar-model\"\n"
	frames   = "target = \"add-past-ten-within-20\"\nfocus = \"near-doubles\"\npicture = \"ten-frame\"\n"
	filled   = "target = \"find-the-change-within-20\"\npicture = \"ten-frame\"\n"
	bonds    = "target = \"find-the-part-within-20\"\npicture = \"number-bond\"\n"
	dots     = "target = \"subtract-within-10\"\npicture = \"drawing\"\n"
	rows     = "target = \"find-the-difference-within-20\"\npicture = \"drawing\"\n"
	blocks   = "target = \"subtract-within-100\"\nfocus = \"split-tens\"\npicture = \"base-ten\"\n"
	making   = "target = \"add-past-ten-within-20\"\nfocus = \"make-ten\"\npicture = \"drawing\"\n"
	back     = "target = \"subtract-past-ten-within-20\"\nfocus = \"bridge-back\"\npicture = \"bar-model\"\n"
	apart    = "target = \"take-apart-within-10\"\n"
	columns  = "target = \"add-within-100\"\nfocus = \"expanded\"\n"
	chains   = "target = \"two-steps-within-100\"\npicture = \"bar-model\"\nstories = 4\n"
	opened   = "target = \"subtract-past-ten-within-100\"\npicture = \"base-ten\"\n"
	both     = "target = \"compare-then-join-within-100\"\npicture = \"bar-model\"\n"
)

// The pages of the week that faults are planted in.
var (
	learn = "en/" + dateOf(0) + ".html"
	try   = "en/" + dateOf(0) + "-try.html"
	sheet = "en/" + dateOf(0) + "-print.html"
	check = "en/check/" + dateOf(0) + ".html"
)

// pictureFaults are planted one at a time in good pages. Numbers are found by
// pattern, so that the table does not depend on which ones the stories get.
var pictureFaults = []struct {
	name, week, file string
	spoil            func(html string) string
	want             string
}{
	{"two hops change their sizes, and all sums hold", farLine, learn, swapHops, "not in proportion"},
	{"a number stands beside its mark", farLine, learn, more(1, `<text x="(\d+)" y="110"`), "stands under no mark"},
	{"a tick stands elsewhere", nearLine, learn, more(3, `M(\d+) 72v12`), "not equally far apart"},
	{"a mark stands between the ticks", nearLine, learn, more(5, `<text x="(\d+)" y="110"`), "beside the ticks"},
	{"a number stands on the tick of another", nearLine, learn, more(1, `class="step s\d+ in-back".*?y="110" >\d+<.*?y="110" >(\d+)<`), "on its own tick"},
	{"the line is that of another story", farLine, try, otherStory, "does not go with"},
	{"a bar is two units too narrow", bars, learn, narrower(2), "not in proportion"},
	{"a bar of two is three units too short", compare, learn, shorterBar, "not in proportion"},
	{"bars are those of another story", bars, try, otherStory, "which the equation does not have"},
	{"compared bars are those of another story", compare, try, otherStory, "story 1: #picture"},
	{"a dot that is not known yet is missing", filled, try, instead(`(class="fold".*?<path d="[^"]*)M[^"z]*z(" class="unknown")`, `$1$2`), "dots in all, not"},
	{"ten frames are those of another story", frames, try, otherStory, "does not go with"},
	{"the whole of a bond is another", bonds, try, more(1, `class="fold".*?<circle.*?<text[^>]*>(\d+)<`), "the whole is"},
	{"a bond is that of another story", bonds, try, otherStory, "story 1: #picture"},
	{"dots are those of another story", dots, try, otherStory, "which the equation does not have"},
	{"rows of dots are those of another story", rows, try, otherStory, "is neither the whole nor a part"},
	{"tens and ones are those of another story", blocks, try, otherStory, "does not go with its calculation"},
	{"frames that make ten name another sum", making, learn, more(1, `picture make-ten.*?class="was".*?<text[^>]*>(\d+) \+`), "is no part"},
	{"dots stand beside another step than theirs", back, learn, otherStep, "and does not show"},
	{"a tile leads to no reply", apart, try, instead(`class="k1[^"]*"`, ``), "is called right"},
	{"a tile leads to the reply of another", bars, try, instead(`class="l k\d"`, `class="l"`), "is shown to"},
	{"another number is called right", compare, try, instead(`class="l( *[^"]*"> *\d+</label><label class="num"><input type="radio" name="o1" class="e")`, `class="e$1`), "gets 2 replies"},
	{"an answer gets two replies", bonds, try, instead(`class="reply r1"`, `class="reply r1 large"`), "gets 2 replies"},
	{"a story is worked out nowhere", bars, try, instead(`class="way"`, `class="wy"`), "story 1: there is no equation"},
	{"a picture is ahead of its story", bonds, learn, ahead, "before it is told"},

	// Groups that say what they are not, or are not as many as they say.
	{"a part has a dot less than it says", making, try, withoutDot("part-a"), "is drawn as"},
	{"a row has a dot less than it says", rows, try, withoutDot("part-a"), "is drawn as"},
	{"the ones are a dot less than they say", blocks, try, withoutDot("one part-a"), "is drawn as"},
	{"a legend says more than lie in the frames", frames, try, withoutDot("part-a"), "dots stand for"},
	{"a pair is other dots than its sum says", apart, try, instead(`class="part-a"`, `class="part-b"`), "dots stand for"},
	{"fewer dots are crossed out than the legend says", dots, try, instead(`d="M\d+ \d+l\d+ \d+m0-\d+l-\d+ \d+(M[^"]*" class="cross")`, `d="$1`), "dots stand for"},
	{"a cross lies beside the dots", dots, try, more(5, `d="M(\d+) \d+l[^"]*" class="cross"`), "beside the dots"},
	{"a dot lies beside the frames", frames, try, more(-100, `d="M(\d+) \d+a[^"]*" class="part-a"`), "lies beside the frames"},
	{"a dot moves without an arrow", making, learn, instead(`class="move"`, `class="guide"`), "by 0 arrows"},
	{"a ten is drawn as a hundred", blocks, try, instead(`class="ten part-a"`, `class="hundred part-a"`), "drawn as something else"},
	{"what is taken away is not struck out", blocks, try, instead(`d="M\d+ \d+l\d+-\d+(M[^"]*" class="strike")`, `d="$1`), "struck out"},
	{"a column comes to another number", columns, learn, more(1, `class="total".*?<text.*?<text[^>]*>(\d+)<`), "below a column of"},
	{"a number is split into others", columns, learn, more(1, `class="number".*?<text.*?<text[^>]*>(\d+)<`), "is split into"},
	{"the whole of a bond says that it is a part", bonds, try, instead(`class="whole" >`, `class="part" >`), "circles for a whole"},
	{"the longer bar says that it is the shorter", compare, try, exchanged("longer", "shorter"), "compare: the parts make"},
	{"a hop goes the other way than it says", farLine, learn, instead(`class="small" >\+`, `class="small" >−`), "the wrong way"},
	{"a hop says that it is something else", farLine, learn, instead(`class="hop"`, `class="skip"`), "which no line has"},
	{"a brace says another number than its parts make", chains, try, more(1, `class="way">.*?picture steps.*?class="whole".*?<text[^>]*>(\d+)<`), "steps: "},
	{"a brace joins half of a part", chains, try, more(20, `picture steps.*?M(\d+) \d+q0-6 6-6h\d+q6 0 6-6[^"]*" class="brace"`), "no parts"},
	{"two bars make another number", both, try, more(1, `class="way">.*?class="both".*?<text[^>]*>(\d+)<`), "the two bars make"},
	{"something is crossed out where nothing leaves", rows, try, instead(`class="part-b"`, `class="cross"`), "takes nothing away"},
	{"a trade in columns has no arrow", columns, learn, instead(`class="move"`, `class="thin"`), "with 0 arrows"},
	{"a ten is opened without an arrow", opened, try, instead(`class="move"`, `class="thin"`), "with 0 arrows"},
	{"more is crossed out than the legend says", blocks, try, more(-1, `picture blocks.*?class="legend".*?<text[^>]*>(\d+)<`), "the legend says"},
	{"the sheet tells the sign", bars, sheet, instead(`<span class="box sign"></span>`, `+`), "the equations to write"},
	{"the sheet lacks a number", bars, sheet, instead(`<span class="box"></span>`, ``), "the equations to write"},
	{"the model tells another number", bars, sheet, more(1, `class="model".*?<b class=n>(\d+)`), "which the sentences do not tell"},
	{"the model's equation has another number", bars, sheet, more(1, `class="model".*?<p class="big">.*?(\d+)`), "the model: "},
	{"the model's picture shows another number", bars, sheet, more(1, `class="model".*?class="part".*?<text[^>]*>(\d+)`), "#picture-1"},
	{"the model's answer is another", bars, sheet, more(1, `class="slip say".*?<b class=n>(\d+)`), "the model's answer is"},
	{"a step of the model is not true", bars, sheet, more(1, `<ol class="steps">.*?<bdi class=eq[^>]*>(\d+)`), "is not true"},
	{"the model is not worked out", bars, sheet, instead(`<p class="chain">.*?</p>`, ``), "it is not worked out"},
	{"an answer at the foot is another", bars, sheet, more(1, `class="turned".*?<b class=n>(\d+)`), "the answers on paper are"},
	{"two numbers lead to two others", bars, check, more(1, `href="#pair-(\d+)-`), "lead to"},

	{"bars say that they are a bond", bars, try, instead(`class="picture bar"`, `class="picture bond"`), "circles for a whole"},
	{"a picture says that it is of no known sort", bars, try, instead(`class="picture bar"`, `class="picture stripes"`), "no sort of picture"},
}

// more adds to the number that a group of the pattern finds first.
func more(by int, pattern string) func(string) string {
	re := regexp.MustCompile("(?s)" + pattern)
	return func(html string) string {
		at := re.FindStringSubmatchIndex(html)
		for i := 2; i < len(at); i += 2 {
			if at[i] < 0 {
				continue
			}
			if n, err := strconv.Atoi(html[at[i]:at[i+1]]); err == nil {
				return html[:at[i]] + strconv.Itoa(n+by) + html[at[i+1]:]
			}
		}
		return html
	}
}

// instead writes something else where the pattern is found first.
func instead(pattern, with string) func(string) string {
	re := regexp.MustCompile("(?s)" + pattern)
	return func(html string) string {
		at := re.FindStringSubmatchIndex(html)
		if at == nil {
			return html
		}
		return html[:at[0]] + string(re.ExpandString(nil, with, html, at)) + html[at[1]:]
	}
}

// withoutDot takes away the first dot of a path that has more, and of a class.
func withoutDot(class string) func(string) string {
	return instead(`d="M\d+ \d+a[^M"]*z(M[^"]*" class="`+class+`")`, `d="$1`)
}

// exchanged has groups of two classes say the other one.
func exchanged(a, b string) func(string) string {
	quoted := func(s string) string { return `class="` + s + `"` }
	return strings.NewReplacer(quoted(a), quoted(b), quoted(b), quoted(a)).Replace
}

var svg = regexp.MustCompile(`(?s)<svg id="picture.*?</svg>`)

// swapHops exchanges the first two hops of a line that goes up in three, and
// writes the number between them anew: every sum still holds, in order.
func swapHops(html string) string {
	size := regexp.MustCompile(`class="small" >\+(\d+)<`)
	for _, picture := range svg.FindAllString(html, -1) {
		hops := size.FindAllStringSubmatch(picture, -1)
		stops := regexp.MustCompile(`<text x="\d+" y="110" >(\d+)<`).FindAllStringSubmatch(picture, -1)
		if len(hops) != 3 || len(stops) != 4 || hops[0][1] == hops[1][1] {
			continue
		}
		start, _ := strconv.Atoi(stops[0][1])
		second, _ := strconv.Atoi(hops[1][1])
		spoiled := strings.Replace(picture, ">+"+hops[0][1]+"<", ">+x<", 1)
		spoiled = strings.Replace(spoiled, ">+"+hops[1][1]+"<", ">+"+hops[0][1]+"<", 1)
		spoiled = strings.Replace(spoiled, ">+x<", ">+"+hops[1][1]+"<", 1)
		spoiled = strings.Replace(spoiled, " >"+stops[1][1]+"<", fmt.Sprintf(" >%d<", start+second), 1)
		return strings.Replace(html, picture, spoiled, 1)
	}
	return html
}

// narrower moves the cut between the first two parts of a solved bar into the wider
// one: the other may be as narrow as a bar can be.
func narrower(by int) func(string) string {
	cut := regexp.MustCompile(`(?s)(class="step s\d+ in-back".*?<rect x="8" y="\d+" width=")(\d+)(".*?<rect x=")(\d+)(" y="\d+" width=")(\d+)(" height="46" class="part-b")`)
	return func(html string) string {
		at := cut.FindStringSubmatch(html)
		if at == nil {
			return html
		}
		first, _ := strconv.Atoi(at[2])
		second, _ := strconv.Atoi(at[6])
		if first > second {
			by = -by
		}
		for i, d := range map[int]int{2: by, 4: by, 6: -by} {
			n, _ := strconv.Atoi(at[i])
			at[i] = strconv.Itoa(n + d)
		}
		return strings.Replace(html, at[0], strings.Join(at[1:], ""), 1)
	}
}

// shorterBar moves the cut between the shorter bar and its gap.
func shorterBar(html string) string {
	cut := regexp.MustCompile(`(?s)(class="step s\d+ in-back".*?height="40".*?<rect x="8" y="\d+" width=")(\d+)(" height="40".*?<rect x=")(\d+)(" y="\d+" width=")(\d+)(" height="40" class="part-b")`)
	at := cut.FindStringSubmatch(html)
	if at == nil {
		return html
	}
	for i, d := range map[int]int{2: -3, 4: -3, 6: 3} {
		n, _ := strconv.Atoi(at[i])
		at[i] = strconv.Itoa(n + d)
	}
	return strings.Replace(html, at[0], strings.Join(at[1:], ""), 1)
}

// otherStory puts the open picture of the second story in place of the first's.
func otherStory(html string) string {
	return otherPicture(html, regexp.MustCompile(`(?s)class="fold">.*?(<svg.*?</svg>)`))
}

func otherPicture(html string, pattern *regexp.Regexp) string {
	found := pattern.FindAllStringSubmatchIndex(html, -1)
	for _, at := range found[min(1, len(found)):] {
		first, other := html[found[0][2]:found[0][3]], html[at[2]:at[3]]
		if numbersOf(first) != numbersOf(other) {
			return strings.Replace(html, first, other, 1)
		}
	}
	return html
}

// otherStep puts the picture of the last step in place of that of the step before.
func otherStep(html string) string {
	_, steps, _ := strings.Cut(html, `<ol class="steps">`)
	pictures := svg.FindAllString(steps, 2)
	if len(pictures) < 2 {
		return html
	}
	return strings.Replace(html, pictures[0], pictures[1], 1)
}

// numbersOf is a picture's description, the numbers of which tell it apart.
func numbersOf(picture string) string {
	_, title, _ := strings.Cut(picture, "<title")
	_, title, _ = strings.Cut(title, ">")
	title, _, _ = strings.Cut(title, "<")
	return title
}

// ahead puts the second picture that grows in place of the first.
func ahead(html string) string {
	_, grow, _ := strings.Cut(html, ` in-show"`)
	pictures := svg.FindAllString(grow, 3) // the first, the first again, the second
	if len(pictures) < 3 {
		return html
	}
	return strings.Replace(html, pictures[0], pictures[2], 1)
}

// Each fault that is planted in a picture is found.
func TestPlantedPicturesAreFound(t *testing.T) {
	w := newWorkshop(t)
	built := map[string]fstest.MapFS{}
	for _, f := range pictureFaults {
		t.Run(f.name, func(t *testing.T) {
			if built[f.week] == nil {
				built[f.week] = w.build(t, school{name: "planted", key: "puddle", languages: []string{"en"}, weeks: []string{f.week}})
				if _, problems := recheck.Site(built[f.week]); len(problems) > 0 {
					t.Fatalf("the good pages have problems:\n%v", problems)
				}
			}
			good := string(built[f.week][f.file].Data)
			spoiled := f.spoil(good)
			if spoiled == good {
				t.Fatalf("the fault could not be planted in %s", f.file)
			}
			bad := maps.Clone(built[f.week])
			bad[f.file] = &fstest.MapFile{Data: []byte(spoiled)}
			_, problems := recheck.Site(bad)
			for _, p := range problems {
				if p.File == f.file && strings.Contains(p.Text, f.want) {
					return
				}
			}
			t.Errorf("want a problem of %s that says %q, got %d:\n%v", f.file, f.want, len(problems), problems)
		})
	}
}
