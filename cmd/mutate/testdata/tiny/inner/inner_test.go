package inner

import "testing"

func TestPositive(t *testing.T) {
	if !Positive(1) || Positive(-1) {
		t.Error("wrong")
	}
}
