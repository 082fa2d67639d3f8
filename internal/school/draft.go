package school

import (
	"cmp"
	"crypto/sha256"
	"fmt"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing/fstest"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/output"
	"homebuild/internal/problem"
	"homebuild/internal/tomlfile"
	"homebuild/internal/week"
	"homebuild/locales"
)

// Draft is a new school, as a person described it.
type Draft struct {
	Name      string         // as families know it
	Languages []string       // tags, the class's own first
	Address   string         // empty for none
	Grade     *problem.Grade // nil where nobody has said
	Week      Wishes         // for the first week; its date is needed
	Today     string         // from then on families see the first week, be it before the usual day
}

// Check reads the draft as a build will, in its words. The problem has no place:
// nothing is written yet.
func (d Draft) Check() *diag.Diagnostic { return d.check(Open("", d.memory())) }

func (d Draft) check(school *School) *diag.Diagnostic {
	in, problems := school.readFiles()
	if problems = slices.DeleteFunc(problems, week.OnlyNoWeek); len(problems) > 0 {
		return first(problems)
	}
	return school.refused(in, d.Week)
}

// Proposed is the draft with what was left open, for a folder of a name. A target
// tells its grade, and a grade its first target.
func (d Draft) Proposed(folder string) Draft {
	if d.Name == "" {
		d.Name = nameOf(folder)
	}
	if len(d.Languages) == 0 {
		d.Languages = []string{i18n.SourceTag}
	}
	if d.Week.Date == "" {
		d.Week.Date = MondayFrom(d.Today)
	}
	if d.Week.Target != "" {
		d.Week.Target = meant(d.Week.Target)
		if found := FindTargets(d.Week.Target); d.Grade == nil && len(found) == 1 {
			d.Grade = &found[0].Grade
		}
		return d
	}
	d.Week.Target = FirstTarget
	if d.Grade != nil {
		d.Week.Target = FirstTargetOf(*d.Grade)
	}
	return d
}

// nameOf makes a name of a folder's: "my-class" is "My class".
func nameOf(folder string) string {
	if full, err := filepath.Abs(folder); err == nil {
		folder = full
	}
	words := []rune(strings.NewReplacer("-", " ", "_", " ").Replace(filepath.Base(folder)))
	return strings.ToUpper(string(words[:1])) + string(words[1:])
}

// memory is the folder of the draft, without a week.
func (d Draft) memory() fstest.MapFS {
	return fstest.MapFS{week.SiteFile: {Data: []byte(d.settings())}}
}

// Files are the files of the new school: its settings, a first week, and how to
// go on. A build will take them; what it would refuse is a problem.
func (d Draft) Files() ([]output.File, *diag.Diagnostic) { return Open("", nil).Draft(d) }

// Draft is [Draft.Files], with what the school has in memory.
func (s *School) Draft(d Draft) ([]output.File, *diag.Diagnostic) {
	folder := d.memory()
	school := s.Beside(folder)
	if wrong := d.check(school); wrong != nil {
		return nil, wrong
	}
	year, problems := school.Year()
	if len(problems) > 0 {
		return nil, first(problems)
	}
	proposal, wrong := year.Propose(d.Week)
	if wrong != nil {
		return nil, wrong
	}
	d.Name, d.Languages, d.Address = year.Site.Name.Plain, year.Site.Languages, year.Site.Address // as they were understood
	files := []output.File{output.Text(week.SiteFile, d.settings()), year.WeekFile(proposal.shownFrom(d.Today)), d.readme(proposal.Date)}
	for _, f := range files {
		folder[f.Path] = &fstest.MapFile{Data: must(f.Render())}
	}
	_, problems = school.Assemble(nil)
	return files, first(problems)
}

// settings are the site.toml of the draft.
func (d Draft) settings() string {
	name, grade := strings.TrimSpace(d.Name), ""
	if d.Grade != nil {
		grade = strconv.Itoa(int(*d.Grade))
	}
	return fill("site.toml.tmpl", map[string]string{
		"Name": tomlfile.Quote(name), "Tags": remark(each(i18n.Tags(locales.Files), func(tag string) string { return week.LanguageList([]string{tag}) })),
		"Languages": strings.Join(each(d.Languages, strconv.Quote), ", "), "Address": quotedOrNone(d.Address), "Key": keyOf(name), "Grade": grade,
	})
}

const readmeFile = "README.txt"

// readme says how to go on, week by week.
func (d Draft) readme(date string) output.File {
	address := d.Address
	if address == "" {
		address = "https://your-school.example/home/"
	}
	return output.Text(readmeFile, fill("README.txt.tmpl", map[string]string{
		"Title": d.Name, "Line": strings.Repeat("=", len([]rune(d.Name))), "Link": address + date + ".html", "Zip": PlainName(d.Name, "pages"),
		"Date": date,
	}))
}

// PlainName is a name as every computer takes it for a file; the other where no
// letter of it is left.
func PlainName(name, otherwise string) string {
	notPlain := func(c rune) bool { return (c < 'a' || c > 'z') && (c < '0' || c > '9') }
	return cmp.Or(strings.Join(strings.FieldsFunc(strings.ToLower(name), notPlain), "-"), otherwise)
}

// quotedOrNone is a text as TOML; nothing for none.
func quotedOrNone(text string) string {
	if text == "" {
		return ""
	}
	return tomlfile.Quote(text)
}

// keyWords make a key that is easy to copy by hand.
var keyWords = []string{
	"acorn", "badger", "basket", "bridge", "candle", "cedar", "clover", "copper", "drum", "ember", "fern", "feather", "garden", "harbour", "heron", "kettle",
	"lantern", "lemon", "marble", "meadow", "mitten", "otter", "pebble", "pepper", "puddle", "river", "saddle", "sparrow", "thimble", "tulip", "walnut", "willow",
}

// keyOf makes a key from a name: the same name gives the same key.
func keyOf(name string) string {
	sum := sha256.Sum256([]byte(name))
	n := len(keyWords)
	return fmt.Sprintf("%s-%s", keyWords[int(sum[0])%n], keyWords[int(sum[1])%n])
}
