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
					if n := len(pdfPage.FindAll(pdf, -1)); n != 2 {
						t.Errorf("%s/%s on %s: %d pages, want 2", tag, filepath.Base(sheet), p.name, n)
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
	ctx, cancel := ofSeconds(b.ctx, 30)
	defer cancel()
	pdf, err := chromedp.Run(ctx, chromedp.PrintToPDF(chromedp.PDFPaper(paper)))
	if err != nil {
		b.t.Fatal(err)
	}
	return pdf
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

func decode(t *testing.T, file string) string {
	t.Helper()
	f, err := os.Open(file)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	img, _, err := image.Decode(f)
	if err != nil {
		t.Fatal(err)
	}
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
