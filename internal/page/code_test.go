package page

import (
	"fmt"
	"image"
	"image/color"
	"regexp"
	"strings"
	"testing"

	"github.com/makiuchi-d/gozxing"
)

var run = regexp.MustCompile(`M(\d+) (\d+)h(\d+)v1h-(\d+)z`)

// modules paints the path of a code, four dots a module, as a camera sees it.
func modules(t *testing.T, svg string) (*gozxing.BinaryBitmap, int) {
	t.Helper()
	var side, high int
	if _, err := fmt.Sscanf(svg, `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %d %d"`, &side, &high); err != nil || side != high {
		t.Fatalf("no square viewBox in %.60s (%v)", svg, err)
	}
	const dots = 4
	img := image.NewGray(image.Rect(0, 0, side*dots, side*dots))
	for i := range img.Pix {
		img.Pix[i] = 0xff
	}
	_, path, _ := strings.Cut(svg, `fill="#000" d="`)
	for _, m := range run.FindAllStringSubmatch(path, -1) {
		var x, y, w, back int
		if _, err := fmt.Sscan(m[1]+" "+m[2]+" "+m[3]+" "+m[4], &x, &y, &w, &back); err != nil || w != back {
			t.Fatalf("run %s is not closed (%v)", m[0], err)
		}
		for px := x * dots; px < (x+w)*dots; px++ {
			for py := y * dots; py < (y+1)*dots; py++ {
				img.SetGray(px, py, color.Gray{})
			}
		}
	}
	grid, err := gozxing.NewBinaryBitmapFromImage(img)
	if err != nil {
		t.Fatal(err)
	}
	return grid, side
}
