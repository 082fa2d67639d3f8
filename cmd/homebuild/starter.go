package main

import (
	"bytes"
	"crypto/sha256"
	"embed"
	"fmt"
	"path"
	"strconv"
	"strings"
	"text/template"

	"github.com/pelletier/go-toml/v2"

	"homebuild/internal/activity"
	"homebuild/internal/i18n"
	"homebuild/internal/picture"
	"homebuild/internal/publish"
	"homebuild/internal/site"
	"homebuild/internal/story"
	"homebuild/internal/strategy"
	"homebuild/internal/week"
)

// starter holds the files that start and week write for a teacher to change.
//
//go:embed starter
var starter embed.FS

// fill writes one of the starter's files.
func fill(name string, data any) string {
	t := template.Must(template.New(name).Option("missingkey=error").ParseFS(starter, "starter/"+name))
	var b bytes.Buffer
	if err := t.Execute(&b, data); err != nil {
		panic(err) // the file and the data are ours
	}
	return b.String()
}

// newWeek is a week that is to be written.
type newWeek struct {
	date    string
	target  activity.Target
	focus   strategy.Name // 0 for none
	picture picture.Kind  // 0 for none
}

// spoken is what the words of a week file are taken from.
type spoken struct {
	english *i18n.Language
	school  string   // the class's language
	tags    []string // the site's languages, in the site's order
}

// file is the week file, with a remark above each setting.
func (w newWeek) file(words spoken) (publish.File, error) {
	stock, err := story.LoadStock()
	if err != nil {
		return publish.File{}, err
	}
	warmUps, err := site.WarmUps()
	if err != nil {
		return publish.File{}, err
	}
	scenes := each(stock.Settings(), func(id string) string { return strings.TrimPrefix(id, "setting.") })
	moves := each(warmUps, func(m site.WarmUp) string { return m.ID })
	can := words.english.Plain(w.target.CanLine())
	type other struct{ Name, File string }
	data := struct {
		Date, Can, Target, Focus, Picture, WarmUp, Scene string
		Focuses, Pictures, WarmUps, Scenes               string
		Language, Note                                   string
		Others                                           []other
	}{
		Date: w.date, Can: can, Target: w.target.ID, WarmUp: moves[0], Scene: scenes[0],
		Focuses:  remark(each(w.target.Strategies, strategy.Name.String)),
		Pictures: remark(each(w.target.Pictures, picture.Kind.String)),
		WarmUps:  remark(moves), Scenes: remark(scenes),
		Language: week.LanguageName(words.school),
	}
	if w.focus.Valid() {
		data.Focus = w.focus.String()
	}
	if w.picture.Valid() {
		data.Picture = w.picture.String()
	}
	// A sample note only where the class's language is the one it is written in.
	if words.school == i18n.SourceTag {
		data.Note = strings.TrimSpace(fill("note.en.tmpl", data))
	}
	for _, tag := range words.tags {
		if tag != words.school {
			data.Others = append(data.Others, other{week.LanguageName(tag), path.Join(week.Folder, w.date+"."+tag+".md")})
		}
	}
	return textFile(path.Join(week.Folder, w.date+".md"), strings.TrimRight(fill("week.md.tmpl", data), "\n")+"\n"), nil
}

func textFile(name, text string) publish.File {
	return publish.File{Path: name, Render: func() ([]byte, error) { return []byte(text), nil }}
}

// remark lists words on lines of a remark, 80 letters wide.
func remark(words []string) string {
	const wide = 80
	lines := []string{"#  "}
	for i, w := range words {
		if i+1 < len(words) {
			w += ","
		}
		if last := &lines[len(lines)-1]; len(*last)+1+len(w) <= wide {
			*last += " " + w
		} else {
			lines = append(lines, "#   "+w)
		}
	}
	return strings.Join(lines, "\n")
}

// newSchool is a school that is to be written.
type newSchool struct {
	folder    string
	name      string
	languages []string // the class's own first
	address   string   // empty for none
	first     newWeek
}

// files are the files of a new school.
func (n newSchool) files(words spoken) ([]publish.File, error) {
	first, err := n.first.file(words)
	if err != nil {
		return nil, err
	}
	zip := strings.Trim(strings.Map(plainLetter, strings.ToLower(n.name)), "-")
	if zip == "" {
		zip = "pages"
	}
	link := n.address
	if link == "" {
		link = "https://your-school.example/home/"
	}
	return []publish.File{
		textFile(week.SiteFile, fill("site.toml.tmpl", map[string]string{
			"Name": quoted(n.name), "Tags": remark(each(languageWords(), func(tag string) string { return week.LanguageList([]string{tag}) })),
			"Languages": strings.Join(each(n.languages, strconv.Quote), ", "), "Address": quotedOrNone(n.address), "Key": keyOf(n.name),
		})),
		first,
		textFile("README.txt", fill("README.txt.tmpl", map[string]string{
			"Title": n.name, "Line": strings.Repeat("=", len([]rune(n.name))), "Link": link + n.first.date + ".html", "Zip": zip,
			"Date": n.first.date, "Other": otherThan(n.languages),
		})),
	}, nil
}

// otherThan is a language that a note could be in besides the class's own.
func otherThan(languages []string) string {
	if len(languages) > 1 {
		return languages[1]
	}
	if languages[0] != "es" {
		return "es"
	}
	return i18n.SourceTag
}

// plainLetter keeps what every computer takes in the name of a file.
func plainLetter(c rune) rune {
	if c >= 'a' && c <= 'z' || c >= '0' && c <= '9' {
		return c
	}
	return '-'
}

// quoted is a text as TOML, in straight double quotes where it can be.
func quoted(text string) string {
	if !strings.ContainsAny(text, `"\`) {
		return `"` + text + `"`
	}
	data, err := toml.Marshal(map[string]string{"v": text})
	if err != nil {
		panic(err) // a text can always be written
	}
	return strings.TrimSpace(strings.TrimPrefix(string(data), "v = "))
}

func quotedOrNone(text string) string {
	if text == "" {
		return ""
	}
	return quoted(text)
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
