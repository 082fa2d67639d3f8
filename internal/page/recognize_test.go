package page

import "testing"

func TestRecognize(t *testing.T) {
	for name, test := range map[string]struct {
		head string
		want bool
	}{
		"a page":         {`<!doctype html> <html lang="en" dir="ltr" class="index"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="default-src &#39;none&#39;; style-src &#39;sha256-o0r6&#39;; base-uri &#39;none&#39;; form-action &#39;none&#39;">`, true},
		"someone's page": {`<!doctype html> <html lang="en"><head><title>Our school</title>`, false},
		"no page":        {`BEGIN:VCALENDAR`, false},
		"nothing":        {``, false},
	} {
		if got := Recognize([]byte(test.head)); got != test.want {
			t.Errorf("%s: got %v", name, got)
		}
	}
}
