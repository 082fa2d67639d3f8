package cards

import (
	"errors"
	"strings"
	"testing"
)

// Every warm-up is drawn standing and seated, and the one who sits has a stool.
func TestWarmUps(t *testing.T) {
	stool := `x="33" y="92" width="54"`
	for _, id := range WarmUps() {
		for _, seated := range []bool{false, true} {
			svg := must(t)(WarmUp(id, seated))
			if got := strings.Contains(svg, stool); got != seated {
				t.Errorf("%s, seated %t: a stool is drawn: %t", id, seated, got)
			}
			if !strings.Contains(svg, `aria-hidden="true"`) {
				t.Errorf("%s: want a decoration, hidden from people who listen", id)
			}
			_, minY, _, maxY := bounds(t, elements(t, svg))
			if minY < 2 || maxY > 114 {
				t.Errorf("%s, seated %t: want it between 2 and 114, got %d to %d", id, seated, minY, maxY)
			}
		}
	}
	if _, err := WarmUp("warm-up.fly", false); !errors.Is(err, ErrUnknown) {
		t.Errorf("WarmUp of a made-up id: want ErrUnknown, got %v", err)
	}
}
