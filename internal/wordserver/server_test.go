package wordserver

import (
	"errors"
	"html"
	"net/http"
	"net/http/httptest"
	"net/url"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"homebuild/internal/diag"
	"homebuild/internal/school"
	"homebuild/internal/translate"
	"homebuild/locales"
)

const (
	token = "ABC"
	host  = "http://127.0.0.1:8017"
)

// evening is a school with a file of Polish that was just begun.
type evening struct {
	*handler
	t    *testing.T
	file string
}

func newEvening(t *testing.T) *evening {
	t.Helper()
	data, err := translate.NewFile("pl", locales.Files)
	if err != nil {
		t.Fatal(err)
	}
	e := &evening{t: t, file: string(data)}
	files := fstest.MapFS{
		"site.toml":             {Data: []byte("name = \"Pebble Lane School\"\nlanguages = [\"en\"]\n")},
		"weeks/2026-09-14.toml": {Data: []byte("target = \"add-within-20\"\n")},
	}
	opened := school.Open("my-class", files)
	e.handler = &handler{Options: Options{
		Token: token, Tag: "pl", File: "locales/pl.toml",
		Open: func() (*school.Bench, diag.Diagnostics) {
			files["locales/pl.toml"] = &fstest.MapFile{Data: []byte(e.file)}
			return school.OpenBench(opened, "pl")
		},
		Save: func(before, after []byte) error {
			if string(before) != e.file {
				return errors.New("saved by somebody at this very moment")
			}
			e.file = string(after)
			return nil
		},
	}}
	return e
}

func (e *evening) get(address string) *httptest.ResponseRecorder {
	w := httptest.NewRecorder()
	e.ServeHTTP(w, httptest.NewRequest(http.MethodGet, host+address, nil))
	return w
}

// at is the page with the form of a message.
func (e *evening) at(id string) string {
	return e.get("/?" + url.Values{"token": {token}, "at": {id}}.Encode()).Body.String()
}

func (e *evening) post(form url.Values, origin string) *httptest.ResponseRecorder {
	r := httptest.NewRequest(http.MethodPost, host+"/save", strings.NewReader(form.Encode()))
	r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	if origin != "" {
		r.Header.Set("Origin", origin)
	}
	w := httptest.NewRecorder()
	e.ServeHTTP(w, r)
	return w
}

var (
	hiddenField = regexp.MustCompile(`<input type="hidden" name="(\w+)" value="([^"]*)"`)
	emptySkip   = regexp.MustCompile(`(\[page\.skip\]\nhash = "\w+"\nother = )""`)
	textField   = regexp.MustCompile(`name="(text\.[^"]+)"`)
)

// filled is the form of a page with texts in its fields.
func filled(page string, texts ...string) url.Values {
	form := url.Values{}
	for _, m := range hiddenField.FindAllStringSubmatch(page, -1) {
		form.Set(m[1], html.UnescapeString(m[2]))
	}
	for i, m := range textField.FindAllStringSubmatch(page, -1) {
		if i < len(texts) {
			form.Set(m[1], texts[i])
		}
	}
	return form
}

// save saves texts and gives the id of what comes next.
func (e *evening) save(id string, texts ...string) string {
	e.t.Helper()
	w := e.post(filled(e.at(id), texts...), host)
	to, err := url.Parse(w.Header().Get("Location"))
	if w.Code != http.StatusSeeOther || err != nil {
		e.t.Fatalf("%s: %d\n%s", id, w.Code, w.Body)
	}
	return to.Query().Get("at")
}

// Only who knows the token is answered, and only our own page may write.
func TestStrangers(t *testing.T) {
	t.Parallel()
	e := newEvening(t)
	before := e.file
	for _, address := range []string{"/", "/?token=", "/?token=abc", "/page?page=pl/2026-09-14.html", "/page?token=x"} {
		if w := e.get(address); w.Code != http.StatusForbidden || strings.Contains(w.Body.String(), "2026") {
			t.Errorf("%s: %d %s", address, w.Code, w.Body)
		}
	}
	form := filled(e.at("page.skip"), "Do treści")
	for _, origin := range []string{"", "null", "http://evil.example", "http://127.0.0.1:8018", "https://127.0.0.1:8017"} {
		if w := e.post(form, origin); w.Code != http.StatusForbidden {
			t.Errorf("from %q: %d", origin, w.Code)
		}
	}
	form.Set("token", "x")
	if w := e.post(form, host); w.Code != http.StatusForbidden {
		t.Errorf("with another token: %d", w.Code)
	}
	if w := e.get("/save?token=" + token); w.Code != http.StatusNotFound {
		t.Errorf("GET /save: %d", w.Code)
	}
	for _, path := range []string{"../../etc/passwd", "/etc/passwd", "site.toml", ""} {
		if w := e.get("/page?" + url.Values{"token": {token}, "page": {path}}.Encode()); w.Code != http.StatusNotFound {
			t.Errorf("page %q: %d", path, w.Code)
		}
	}
	form = filled(e.at("page.skip"), strings.Repeat("x", mostSaved))
	if w := e.post(form, host); w.Code != http.StatusRequestEntityTooLarge {
		t.Errorf("too large: %d", w.Code)
	}
	if e.file != before {
		t.Error("the file was changed")
	}
}

// A saving changes its line and no other, and goes on in the order of the page: to the
// head first, and to the forms that a sentence asks for at once.
func TestSave(t *testing.T) {
	t.Parallel()
	e := newEvening(t)
	first := e.get("/?token=" + token).Body.String()
	for _, want := range []string{"Your language", `value="polski"`, "texts</b> until families have the page of the week 2026-09-14"} {
		if !strings.Contains(first, want) {
			t.Errorf("the first page does not say %q:\n%s", want, first)
		}
	}
	second := e.save(translate.Head, "polski", "ltr", "latn", "ltr")
	if second != "page.skip" {
		t.Errorf("want the top of the page first, got %s", second)
	}
	before := e.file
	third := e.save(second, "Drogie rodziny.")
	if want := strings.Replace(before, `other = ""`, "X", 1); third == second || len(e.file) != len(before)+len("Drogie rodziny.") || strings.Count(e.file, "Drogie rodziny.") != 1 || len(want) == len(before) {
		t.Errorf("after %s comes %s; the file grew by %d bytes", second, third, len(e.file)-len(before))
	}
	sentence := regexp.MustCompile(`at=(event\.[a-z.-]+\.start)&`).FindStringSubmatch(e.get(frameOf(first)).Body.String())
	if sentence == nil {
		t.Fatal("the page does not lead to the start of its story")
	}
	form := e.save(sentence[1], "Było {Start.genitive}.")
	if !strings.HasPrefix(form, "thing.") || !strings.HasSuffix(form, ".count-genitive") {
		t.Fatalf("after %s with a form comes %s", sentence[1], form)
	}
	page := e.at(form)
	if got := textField.FindAllString(page, -1); len(got) != 3 || !strings.Contains(page, "for 2, 3, 4, 22") || !strings.Contains(page, `placeholder="5 …"`) {
		t.Errorf("want the three forms of Polish to be asked for, got %v", got)
	}
	e.save(form, "1 rzeczy", "2 rzeczy", "5 rzeczy")
	if !strings.Contains(e.file, "["+form+"]\nhash = ") || !strings.Contains(e.file, `many = "{{.N}} rzeczy"`) {
		t.Error("the form is not in the file")
	}
	if frame := e.get(frameOf(e.at(sentence[1]))).Body.String(); !strings.Contains(frame, "rzeczy") || !strings.Contains(frame, "hb-now") {
		t.Error("the page does not say the sentence with its form")
	}
	if again := e.save(sentence[1], "Tam było {Start.genitive}."); again != sentence[1] {
		t.Errorf("a text that is mended does not stay: %s", again)
	}
}

func frameOf(page string) string {
	m := regexp.MustCompile(`<iframe [^>]*src="([^"#]+)`).FindStringSubmatch(page)
	if m == nil {
		return "/"
	}
	return html.UnescapeString(m[1])
}

// What is not saved stays in the form, with the reason: what check rejects, and what
// would take the place of something that the form did not show.
func TestNotSaved(t *testing.T) {
	t.Parallel()
	e := newEvening(t)
	before := e.file
	for _, test := range []struct{ text, want string }{
		{"Tydzień {{.Day}} {{.Month}}", "the place {{.Year}} is missing"},
		{"<b>{{.Year}}</b> {{.Day}} {{.Month}}", "is a sign of markup"},
		{"Dalej \xff", "not UTF-8"},
		{"Dalej {{.Day}} {{.Month}} {{.Year}} {{exec}}", "is not a place"},
	} {
		w := e.post(filled(e.at("page.week"), test.text), host)
		if page := html.UnescapeString(w.Body.String()); w.Code != http.StatusUnprocessableEntity || !strings.Contains(page, test.want) || !strings.Contains(page, test.text[:5]) {
			t.Errorf("%q: %d, want %q", test.text, w.Code, test.want)
		}
	}
	if e.file != before {
		t.Fatal("the file was changed")
	}
	form := filled(e.at("page.skip"), "Mój tekst")
	e.file = emptySkip.ReplaceAllString(e.file, `${1}"Jej tekst"`)
	meanwhile := e.file
	w := e.post(form, host)
	if page := w.Body.String(); w.Code != http.StatusConflict || !strings.Contains(page, "Jej tekst") || !strings.Contains(page, `value="Mój tekst"`) || e.file != meanwhile {
		t.Errorf("changed meanwhile: %d\n%s", w.Code, page)
	}
	if w := e.post(filled(w.Body.String(), "Mój tekst"), host); w.Code != http.StatusSeeOther || !strings.Contains(e.file, "Mój tekst") {
		t.Errorf("saved again: %d", w.Code)
	}
	form = filled(e.at("page.languages"), "Języki")
	open := e.Open
	e.Open = func() (*school.Bench, diag.Diagnostics) {
		b, problems := open()
		e.file += "# of another program\n"
		return b, problems
	}
	if w := e.post(form, host); w.Code != http.StatusConflict || strings.Contains(e.file, "Języki") {
		t.Errorf("at this very moment: %d", w.Code)
	}
}

// What is to mend comes first, each with the way to its text; a file that is no TOML is
// told about, and left.
func TestToMend(t *testing.T) {
	t.Parallel()
	e := newEvening(t)
	e.file = emptySkip.ReplaceAllString(e.file, `${1}"Do  treści"`)
	page := e.get("/?token=" + token).Body.String()
	if !strings.Contains(page, "two spaces") || !strings.Contains(page, "at=page.skip") || strings.Contains(page, "<iframe") {
		t.Errorf("want a way to what is to mend:\n%s", page)
	}
	e.save("page.skip", "Do treści")
	if page := e.get("/?token=" + token).Body.String(); strings.Contains(page, "To mend") || !strings.Contains(page, "<iframe") {
		t.Error("want the page again")
	}
	e.file = "[page\n" + e.file
	if page := e.get("/?token=" + token).Body.String(); !strings.Contains(page, "Line 1") {
		t.Errorf("no TOML: %s", page)
	}
	if w := e.post(url.Values{"token": {token}, "at": {"page.skip"}, "text.page.skip.other": {"x"}}, host); w.Code != http.StatusOK || !strings.HasPrefix(e.file, "[page\n") {
		t.Errorf("saved into what is no TOML: %d", w.Code)
	}
}

// A page runs nothing, sends nothing and is framed by nobody else.
func TestPolicies(t *testing.T) {
	t.Parallel()
	e := newEvening(t)
	own := e.get("/?token=" + token)
	if policy := own.Header().Get("Content-Security-Policy"); !strings.Contains(policy, "script-src '"+hash(script)+"'") || !strings.Contains(policy, "frame-ancestors 'none'") || !strings.Contains(own.Body.String(), "<script>"+script+"</script>") {
		t.Errorf("policy: %s", policy)
	}
	frame := e.get(frameOf(own.Body.String()))
	if policy := frame.Header().Get("Content-Security-Policy"); !strings.HasPrefix(policy, "default-src 'none'; style-src") || strings.Contains(policy, "script-src") {
		t.Errorf("policy of the frame: %s", policy)
	}
	body := frame.Body.String()
	for _, gone := range []string{"<input", "<label", "<summary", "http-equiv", "\U000F0000", "\U00100000", "\uE000"} {
		if strings.Contains(body, gone) {
			t.Errorf("%q is left in the frame", gone)
		}
	}
	if strings.Count(body, "<a ") != strings.Count(body, "</a>") || strings.Count(body, "<a ") < 50 || !strings.Contains(body, "Heard, not seen") {
		t.Errorf("%d links begin and %d end", strings.Count(body, "<a "), strings.Count(body, "</a>"))
	}
}

// A form says where its text stands: among what all see, also where the page's title
// says it too, or among what is only heard; and what a place holds on that page.
func TestWhere(t *testing.T) {
	t.Parallel()
	e := newEvening(t)
	frame := e.get(frameOf(e.get("/?token=" + token).Body.String())).Body.String()
	for _, test := range []struct{ id, want, not string }{
		{"(target\\.[a-z0-9-]+\\.can)", "", "class=\"context\""},
		{"(learn\\.description)", "Heard, not seen:", "On the page:"},
		{"(event\\.[a-z.-]+\\.start)", "On the page:", "Heard, not seen:"},
		{"(event\\.[a-z.-]+\\.start)", ", the number alone", ""},
	} {
		id := regexp.MustCompile(`at=` + test.id + `&`).FindStringSubmatch(frame)
		if id == nil {
			t.Fatalf("the page does not lead to %s", test.id)
		}
		page := e.at(id[1])
		_, card, _ := strings.Cut(page, `<section class="card">`)
		if !strings.Contains(card, test.want) || test.not != "" && strings.Contains(card, test.not) {
			t.Errorf("%s: want %q and not %q in\n%s", id[1], test.want, test.not, card)
		}
	}
}

// After a text comes what it asks for, then what follows on the page, wherever the forms
// of things are asked for meanwhile; a text that was put off comes last.
func TestNext(t *testing.T) {
	h := &handler{}
	for _, step := range []struct{ saved, before, after, want string }{
		{"a", "a b c d", "b c d", "b"},
		{"b", "b c d thing.x", "thing.y c d thing.x", "thing.y"},
		{"thing.y", "c d thing.x thing.y", "c d thing.x", "c"},
		{"d", "c d thing.x", "c thing.x", "thing.x"}, // c was put off
		{"thing.x", "c thing.x", "c", "c"},
		{"c", "c", "", "c"},
		{"b", "e f", "e f", "b"},               // it was mended
		{"b", "e f", "e thing.z f", "thing.z"}, // and asks for a form now
	} {
		if got := h.next(strings.Fields(step.before), strings.Fields(step.after), step.saved); got != step.want {
			t.Errorf("after %s of %q, with %q left: want %s, got %s", step.saved, step.before, step.after, step.want, got)
		}
	}
}
