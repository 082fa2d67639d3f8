package story

// Beside tells stories beside those of a week that were told: in the week's place,
// next door, then anywhere, as other tales while there are some. Some children
// only meet them, so the teller does not remember them.
func (t *Teller) Beside(w Week, told []Story) ([]Story, error) {
	had := map[string]bool{}
	for _, s := range told {
		had[s.Event] = true
	}
	a, err := t.inTown(w, t.inTurn(w)[0], had)
	if err != nil {
		return nil, err
	}
	out := make([]Story, len(w.Tales))
	for i, x := range w.Tales {
		out[i] = write(a.events[i], x.Choice, w.InWords)
	}
	return out, nil
}
