//go:build browser

package browser_test

import (
	"cmp"
	"fmt"
	"image"
	_ "image/png" // for the pictures of the paper
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"sync"
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

// ladder is the week of the example school that has easier and harder stories: they
// are a page of their own.
const ladder = "2026-10-19"

// sides is a script that lists the sides of a sheet that are higher than its paper, in
// CSS pixels, or wider.
const sides = `(high => {
	const out = [...document.querySelectorAll(".side")].map(e => e.getBoundingClientRect().height).flatMap((h, i) =>
		h > high ? ["side " + (i + 1) + " is " + Math.round(h) + " px high, the paper " + Math.round(high)] : []);
	const wide = document.scrollingElement.scrollWidth - document.documentElement.clientWidth;
	return wide > 0 ? [...out, "the sheet is " + wide + " px wider than the paper"] : out;
})`

// Every week's sheet is one sheet, both sides, on both papers: each side is measured
// as it is laid out for the paper. Printed and counted are the sheet with the most on it
// and the one of three pages, with -all every one; TestEveryPageOnPaper prints the
// fullest in each language.
func TestPaperIsOneSheet(t *testing.T) {
	t.Parallel()
	for _, tag := range languages(t) {
		t.Run(tag, func(t *testing.T) {
			t.Parallel()
			b := openTab(t)
			must(t, call(b, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print"}))
			for _, sheet := range sheetsToPrint(t, tag) {
				b.visit("file://" + sheet)
				want := 2
				if strings.Contains(sheet, ladder) {
					want = 3
				}
				if n := eval[int](b, `document.querySelectorAll(".side").length`); n != want {
					t.Errorf("%s: %d sides, want %d", filepath.Base(sheet), n, want)
				}
				for _, p := range papers {
					const margins = 2 * 11 / 25.4 // of print.css, in inches
					wide, high := 96*(p.size.Width-margins), 96*(p.size.Height-margins)
					b.size(int64(wide), int64(high))
					b.none(filepath.Base(sheet)+" on "+p.name, fmt.Sprintf("%s(%f)", sides, high))
					if !*all && want == 2 && (tag != "en" || !strings.Contains(sheet, heavy)) {
						continue
					}
					if n := len(pdfPage.FindAll(b.print(p.size), -1)); n != want {
						t.Errorf("%s on %s: %d pages, want %d", filepath.Base(sheet), p.name, n, want)
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

// desk is the folder of the teacher's own files of the week with the most on its
// sheets, in every language, made once for all tests.
var desk = sync.OnceValues(func() (string, error) {
	program, err := program()
	if err != nil {
		return "", err
	}
	school := filepath.Join(workspace, "school")
	if err := os.CopyFS(school, os.DirFS(filepath.Join("..", "site"))); err != nil {
		return "", err
	}
	if out, err := exec.Command(program, "share", school, heavy, "--on", "2027-03-01").CombinedOutput(); err != nil {
		return "", fmt.Errorf("the example school cannot be shared: %w\n%s", err, out)
	}
	return filepath.Join(school, "desk", heavy), nil
})

// Every kind of page prints on both papers: the papers that are made for it fill
// their pages, and no page that is printed is blank. A quick run prints only the sheets
// on both papers, and of pages that differ in how much is on them the fullest.
func TestEveryPageOnPaper(t *testing.T) {
	t.Parallel()
	folder, err := desk()
	must(t, err)
	made, err := filepath.Glob(filepath.Join(folder, "to-send", "*.html"))
	must(t, err)
	tags := len(made) // every language of the school, whatever a quick run looks at
	on := func(name string) string { return "file://" + filepath.Join(folder, name) }
	const allSheets = "the sheets of all languages"
	const anyNumber = 40 // of pages
	type printed struct {
		name, url   string
		least, most int // pages
		filled      int // how far down each page is printed at least, in hundredths of its height
	}
	prints := []printed{
		{"a sheet", file("ru/" + heavy + "-print.html"), 2, 2, 80},
		{"the week in one file, as its sheet", on("to-send/" + heavy + "-ar.html"), 2, 2, 80},
		{allSheets, on("sheets.html"), 2 * tags, 2 * tags, 80},
		{"slips", on("slips.html"), tags, tags, 80},
		{"the answer key", on("answer-key.html"), 1, 2, 5},
	}
	for _, v := range views("en")[:11] { // a walk is printed whole, whatever screen it shows
		if !*all && slices.Contains([]string{"learn", "print", "try", "try-places"}, v.name) {
			continue // learn-number, a sheet and try-heavy are printed
		}
		prints = append(prints, printed{v.name, file(v.path), 1, anyNumber, 3})
	}
	b := openTab(t)
	for _, x := range prints {
		b.visit(x.url)
		for i, p := range papers {
			if i > 0 && !*all && x.name != allSheets {
				continue
			}
			pictures := pngs(t, b.print(p.size), "-r", "20")
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
	folder, err := desk()
	must(t, err)
	b := openTab(t)
	b.visit("file://" + filepath.Join(folder, "slips.html"))
	must(t, call(b, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Media: "print"}))
	b.size(794, 1123)    // A4 (ISO 216)
	const mm = 96 / 25.4 // CSS Values and Units 4, 6.2: 96 px are an inch
	if high := eval[float64](b, `Math.max(...[...document.querySelectorAll(".cut")].map(x => x.getBoundingClientRect().height))`) / mm; high > 60 {
		t.Errorf("a slip is %.0f mm high, want at most 60", high)
	}
	wide := `Math.min(...[...document.querySelectorAll(".cut > svg")].map(x => { const r = x.querySelector("path, use").getBoundingClientRect(); return r.width }))`
	if wide := eval[float64](b, wide) / mm; wide < 25 {
		t.Errorf("a code is %.0f mm wide, want at least 25", wide)
	}
	over := `[...document.querySelectorAll(".cut")].filter(x => x.scrollHeight > x.clientHeight + 1 || x.scrollWidth > x.clientWidth + 1).map(x => x.parentElement.lang).join(" ")`
	if over := eval[string](b, over); over != "" {
		t.Errorf("the words do not fit on the slips of: %s", over)
	}
}

// The code on the paper is read back from a picture of the paper, as a phone
// does, and is the weekly link: in a quick run, in each direction of writing on another
// paper.
func TestPaperCode(t *testing.T) {
	t.Parallel()
	b := openTab(t)
	for i, tag := range closely {
		path := tag + "/" + week + "-print.html"
		b.visit(file(path))
		want := strings.TrimSuffix(eval[string](b, `document.querySelector("link[rel=canonical]").href`), path) + week + ".html"
		for j, p := range papers {
			if i != j && !*all {
				continue
			}
			pictures := pngs(t, b.print(p.size), "-r", "150", "-l", "1") // its first side
			if got := decode(t, pictures[0]); got != want {
				t.Errorf("%s on %s: the code says %q, want %q", tag, p.name, got, want)
			}
		}
	}
}

// pngs paints the pages of a PDF, as options of pdftoppm say, and returns the files.
func pngs(t *testing.T, pdf []byte, options ...string) []string {
	t.Helper()
	dir := t.TempDir()
	in := filepath.Join(dir, "sheet.pdf")
	if err := os.WriteFile(in, pdf, 0o644); err != nil {
		t.Fatal(err)
	}
	if out, err := exec.Command("pdftoppm", append(options, "-png", in, filepath.Join(dir, "side"))...).CombinedOutput(); err != nil {
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
