package qrcode

import (
	"bytes"
	"image"
	"image/color"
	"image/png"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/makiuchi-d/gozxing"
	reader "github.com/makiuchi-d/gozxing/qrcode"
)

const address = "https://pebblelane.example/home/2026-09-14.html"

// A code is read again by a library that shares nothing with the one that drew
// it (gozxing).
func TestRead(t *testing.T) {
	data, err := PNG(address)
	if err != nil {
		t.Fatal(err)
	}
	photo, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	code, err := Of(address)
	if err != nil {
		t.Fatal(err)
	}
	svg := code.SVG("the week's link")
	for name, img := range map[string]image.Image{"PNG": photo, "SVG": drawn(t, svg)} {
		if got := read(t, img); got != address {
			t.Errorf("%s is read as %q, want %q", name, got, address)
		}
	}
}

func read(t *testing.T, img image.Image) string {
	t.Helper()
	bits, err := gozxing.NewBinaryBitmapFromImage(img)
	if err != nil {
		t.Fatal(err)
	}
	result, err := reader.NewQRCodeReader().Decode(bits, map[gozxing.DecodeHintType]any{gozxing.DecodeHintType_PURE_BARCODE: true})
	if err != nil {
		t.Fatal(err)
	}
	return result.GetText()
}

// drawn paints the runs of the SVG, 8 pixels a module.
func drawn(t *testing.T, svg string) image.Image {
	t.Helper()
	const scale = 8
	side := number(t, regexp.MustCompile(`viewBox="0 0 (\d+) `).FindStringSubmatch(svg)[1]) * scale
	img := image.NewGray(image.Rect(0, 0, side, side))
	for i := range img.Pix {
		img.Pix[i] = 255
	}
	runs := regexp.MustCompile(`M(\d+) (\d+)h(\d+)v1h-\d+z`).FindAllStringSubmatch(svg, -1)
	for _, run := range runs {
		x, y, length := number(t, run[1])*scale, number(t, run[2])*scale, number(t, run[3])*scale
		for px := x; px < x+length; px++ {
			for py := y; py < y+scale; py++ {
				img.Set(px, py, color.Black)
			}
		}
	}
	return img
}

func number(t *testing.T, text string) int {
	t.Helper()
	n, err := strconv.Atoi(text)
	if err != nil {
		t.Fatal(err)
	}
	return n
}

func TestLabelIsEscaped(t *testing.T) {
	code, err := Of(address)
	if err != nil {
		t.Fatal(err)
	}
	const label = `"><script>`
	for _, svg := range []string{code.SVG(label), code.Named(label, "code"), code.Again(label, "code")} {
		if strings.Contains(svg, "<script>") {
			t.Errorf("the label stands unescaped in %s", svg)
		}
	}
}

// A code that has a name is drawn as any other; shown again it is as large, and draws
// nothing of its own.
func TestAgain(t *testing.T) {
	code, err := Of(address)
	if err != nil {
		t.Fatal(err)
	}
	if got := read(t, drawn(t, code.Named("the week's link", "code"))); got != address {
		t.Errorf("read as %q, want %q", got, address)
	}
	again := code.Again("the week's link", "code")
	box := regexp.MustCompile(`viewBox="[^"]+"`)
	if box.FindString(again) != box.FindString(code.SVG("")) {
		t.Errorf("not as large: %s", again)
	}
	if !strings.Contains(again, `<use href="#code"/>`) || strings.Contains(again, "<path") {
		t.Errorf("want the drawing with the id, got %s", again)
	}
}

// A code of error level M holds at most 2,331 bytes (ISO/IEC 18004, version 40).
func TestTooLong(t *testing.T) {
	if _, err := Of(strings.Repeat("x", 2332)); err == nil {
		t.Error("want an error for an address that no code can hold")
	}
	if _, err := PNG(strings.Repeat("x", 2331)); err != nil {
		t.Errorf("want the longest address drawn, got %v", err)
	}
}
