//go:build browser

package browser_test

import (
	"cmp"
	"image"
	_ "image/png" // for the pictures of the paper
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"
)

// papers are the sheets that schools print on (ISO 216, ANSI Letter), in inches.
var papers = []struct {
	name string
	size chromedp.PaperSize
}{
	{"A4", chromedp.PaperSize{Width: 8.27, Height: 11.69}},
	{"Letter", chromedp.PaperSize{Width: 8.5, Height: 11}},
}

// sheetsToPrint are the sheets of every week in the class's language, and in
// each other language the two with the most on them: printing takes time.
func sheetsToPrint(t *testing.T, tag string) []string {
	t.Helper()
	sheets, err := filepath.Glob(filepath.Join(public, tag, "*-print.html"))
	if err != nil || len(sheets) < 3 {
		t.Fatalf("%s: %d sheets to print: %v", tag, len(sheets), err)
	}
	if tag == "en" {
		return sheets
	}
	slices.SortFunc(sheets, func(a, b string) int { return cmp.Compare(weight(t, b), weight(t, a)) })
	return sheets[:2]
}

// weight tells how much a sheet holds.
func weight(t *testing.T, sheet string) int64 {
	t.Helper()
	info, err := os.Stat(sheet)
	must(t, err)
	return info.Size()
}

// ladder is the week of the example school that has easier and harder stories.
const ladder = "2026-10-19"

// Every week's sheet is one sheet, both sides, on both papers.
func TestPaperIsOneSheet(t *testing.T) {
	t.Parallel()
	for _, tag := range languages(t) {
		t.Run(tag, func(t *testing.T) {
			t.Parallel()
			b := openTab(t)
			for _, sheet := range sheetsToPrint(t, tag) {
				b.visit("file://" + sheet)
				for _, p := range papers {
					pdf := b.print(p.size)
					want := 2
					if strings.Contains(sheet, ladder) { // its easier and harder stories are a page of their own
						want = 3
					}
					if n := len(pdfPage.FindAll(pdf, -1)); n != want {
						t.Errorf("%s/%s on %s: %d pages, want %d", tag, filepath.Base(sheet), p.name, n, want)
					}
				}
			}
		})
	}
}

// pdfPage is a page in a PDF file (ISO 32000-1, 7.7.3.3 "Page Objects").
var pdfPage = regexp.MustCompile(`/Type\s*/Page\b[^s]`)

func (b *tab) print(paper chromedp.PaperSize) []byte {
	b.t.Helper()
	ctx, cancel := ofSeconds(b.ctx, 120) // the sheets of all languages are two dozen pages
	defer cancel()
	pdf, err := chromedp.Run(ctx, chromedp.PrintToPDF(chromedp.PDFPaper(paper)))
	if err != nil {
		b.t.Fatal(err)
	}
	return pdf
}

// desk makes the teacher's own files of the week with the most on its sheets, in
// every language, and gives their folder.
func desk(t *testing.T) string {
	t.Helper()
	school := t.TempDir()
	must(t, os.CopyFS(school, os.DirFS(filepath.Join("..", "site"))))
	if out, err := exec.Command("go", "run", "../cmd/homebuild", "share", school, heavy, "--on", "2027-03-01").CombinedOutput(); err != nil {
		t.Fatalf("the example school cannot be shared: %v\n%s", err, out)
	}
	return filepath.Join(school, "desk", heavy)
}

// Every kind of page prints on both papers: the papers that are made for it fill
// their pages, and no page that is printed is blank.
func TestEveryPageOnPaper(t *testing.T) {
	t.Parallel()
	folder := desk(t)
	made, err := filepath.Glob(filepath.Join(folder, "to-send", "*.html"))
	must(t, err)
	tags := len(made) // every language of the school, whatever a quick run looks at
	on := func(name string) string { return "file://" + filepath.Join(folder, name) }
	const anyNumber = 40 // of pages
	type printed struct {
		name, url   string
		least, most int // pages
		filled      int // how far down each page is printed at least, in hundredths of its height
	}
	prints := []printed{
		{"a sheet", file("ru/" + heavy + "-print.html"), 2, 2, 80},
		{"the week in one file, as its sheet", on("to-send/" + heavy + "-ar.html"), 2, 2, 80},
		{"the sheets of all languages", on("sheets.html"), 2 * tags, 2 * tags, 80},
		{"slips", on("slips.html"), tags, tags, 80},
		{"the answer key", on("answer-key.html"), 1, 2, 5},
	}
	for _, v := range views("en")[:11] { // a walk is printed whole, whatever screen it shows
		prints = append(prints, printed{v.name, file(v.path), 1, anyNumber, 3})
	}
	b := openTab(t)
	for _, x := range prints {
		b.visit(x.url)
		for i, p := range papers {
			if i > 0 && x.most == anyNumber && !*all {
				continue // a quick run prints what is made for the screen on one paper
			}
			pictures := pngs(t, b.print(p.size), 20)
			if n := len(pictures); n < x.least || n > x.most {
				t.Errorf("%s on %s: %d pages, want %d to %d", x.name, p.name, n, x.least, x.most)
			}
			for i, picture := range pictures {
				if down := printedTo(t, picture); down < x.filled {
					t.Errorf("%s on %s: page %d is printed to %d %% of its height, want %d", x.name, p.name, i+1, down, x.filled)
				}
			}
		}
	}
}

// printedTo tells how far down the lowest dark point of a picture is, in
// hundredths of its height.
func printedTo(t *testing.T, file string) int {
	t.Helper()
	img := pixels(t, file)
	at := img.Bounds()
	for y := at.Max.Y - 1; y >= at.Min.Y; y-- {
		for x := at.Min.X; x < at.Max.X; x++ {
			if r, g, b, _ := img.At(x, y).RGBA(); r+g+b < 3*0xc000 {
				return 100 * (y - at.Min.Y + 1) / at.Dy()
			}
		}
	}
	return 0
}

// The slips are at most 60 mm high, their code is at least 25 mm wide without its
// margin, and the words of each language fit. Common practice, no published source.
func TestSlipsFit(t *testing.T) {
	t.Parallel()
	b := openTab(t)
	b.visit("file://" + filepath.Join(desk(t), "slips.html"))
	must(t, call(b, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print"}))
	b.size(794, 1123)    // A4 (ISO 216)
	const mm = 96 / 25.4 // CSS Values and Units 4, 6.2: 96 px are an inch
	if high := eval[float64](b, `Math.max(...[...document.querySelectorAll(".cut")].map(x => x.getBoundingClientRect().height))`) / mm; high > 60 {
		t.Errorf("a slip is %.0f mm high, want at most 60", high)
	}
	wide := `Math.min(...[...document.querySelectorAll(".cut > svg")].map(x => { const r = x.querySelector("path").getBoundingClientRect(); return r.width }))`
	if wide := eval[float64](b, wide) / mm; wide < 25 {
		t.Errorf("a code is %.0f mm wide, want at least 25", wide)
	}
	over := `[...document.querySelectorAll(".cut")].filter(x => x.scrollHeight > x.clientHeight + 1 || x.scrollWidth > x.clientWidth + 1).map(x => x.parentElement.lang).join(" ")`
	if over := eval[string](b, over); over != "" {
		t.Errorf("the words do not fit on the slips of: %s", over)
	}
}

// The code on the paper is read back from a picture of the paper, as a phone
// does, and is the weekly link.
func TestPaperCode(t *testing.T) {
	t.Parallel()
	b := openTab(t)
	for _, tag := range languages(t) {
		if !slices.Contains(closely, tag) {
			continue
		}
		path := tag + "/" + week + "-print.html"
		b.visit(file(path))
		want := strings.TrimSuffix(eval[string](b, `document.querySelector("link[rel=canonical]").href`), path) + week + ".html"
		for _, p := range papers {
			pictures := pngs(t, b.print(p.size), 150)
			if len(pictures) != 2 {
				t.Fatalf("%s on %s: %d pictures, want 2", tag, p.name, len(pictures))
			}
			if got := decode(t, pictures[0]); got != want {
				t.Errorf("%s on %s: the code says %q, want %q", tag, p.name, got, want)
			}
		}
	}
}

// pngs paints the pages of a PDF, in dots per inch, and returns the files.
func pngs(t *testing.T, pdf []byte, dots int) []string {
	t.Helper()
	dir := t.TempDir()
	in := filepath.Join(dir, "sheet.pdf")
	if err := os.WriteFile(in, pdf, 0o644); err != nil {
		t.Fatal(err)
	}
	if out, err := exec.Command("pdftoppm", "-png", "-r", strconv.Itoa(dots), in, filepath.Join(dir, "side")).CombinedOutput(); err != nil {
		t.Fatalf("pdftoppm: %v: %s", err, out)
	}
	files, err := filepath.Glob(filepath.Join(dir, "side*.png"))
	if err != nil {
		t.Fatal(err)
	}
	return files
}

func pixels(t *testing.T, file string) image.Image {
	t.Helper()
	f, err := os.Open(file)
	must(t, err)
	defer f.Close()
	img, _, err := image.Decode(f)
	must(t, err)
	return img
}

func decode(t *testing.T, file string) string {
	t.Helper()
	img := pixels(t, file)
	bits, err := gozxing.NewBinaryBitmapFromImage(img)
	if err != nil {
		t.Fatal(err)
	}
	hints := map[gozxing.DecodeHintType]any{gozxing.DecodeHintType_TRY_HARDER: true}
	result, err := qrcode.NewQRCodeReader().Decode(bits, hints)
	if err != nil {
		t.Fatalf("the code cannot be read from the paper: %v", err)
	}
	return result.GetText()
}
