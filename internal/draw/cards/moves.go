package cards

// WarmUp draws a warm-up, such as "warm-up.reach": a child who stands and, for
// seated, one who sits on a stool. It is a decoration; the words beside it tell
// what to do. The error for another id wraps ErrUnknown.
func WarmUp(id string, seated bool) (string, error) {
	c, err := find(id, warmUps(seated))
	if err != nil {
		return "", err
	}
	return draw(characterFrame(), c.drawing.on)
}

// WarmUps lists the ids of the warm-ups that are drawn.
func WarmUps() []string { return ids(warmUps(false)) }

func warmUps(seated bool) []card {
	reach, tiptoe, pairs := join(standing(), armsUp()), join(stepping(), armsOut()), join(standing(), handsOpen())
	if seated {
		reach, tiptoe, pairs = join(sitting(), armsUp()), join(tapping(), armsOut()), join(sitting(), nodding())
	}
	return deck("warm-up.", "w-", []named{{"reach", reach}, {"tiptoe", tiptoe}, {"pairs", pairs}})
}

// mover is a child from the waist up without arms, whose head is around 60, 44.
func mover() drawing {
	return join(
		pen(orange, "M60 64q-13 0-15 10l-2 20q17 5 34 0l-2-20q-2-10-15-10z"),
		pen(dark, "M38 46q-4-26 22-26t22 26z"), // hair behind
		disc(skin3, 39, 46, 4), disc(skin3, 81, 46, 4),
		disc(skin3, 60, 44, 20),
		pen(dark, "M41 38q4-16 19-16t19 16q-9-1-13-8q-10 8-25 8z"),
		face(60, 46, 8),
	)
}

func standing() drawing {
	return join(
		pen(blue, "M47 92v16h11v-12h4v12h11v-16z"),
		twin(dark, "M43 113q0-7 8-7h7v7z"),
		mover(),
	)
}

// stepping has one foot off the floor.
func stepping() drawing {
	return join(
		pen(blue, "M47 92v16h11v-12h4v4h12v-8z"),
		pen(dark, "M43 113q0-7 8-7h7v7z"),
		pen(dark, "M62 106v-8h7q8 0 8 8z"),
		pen(line, "M66 112q4-3 8 0"),
		mover(),
	)
}

func stool() drawing {
	return join(
		slab(brown, 37, 98, 5, 15, 0), slab(brown, 78, 98, 5, 15, 0),
		slab(brown, 33, 92, 54, 7, 3),
	)
}

func sitting() drawing {
	return join(stool(),
		twin(blue, "M45 90q-3 0-3 5v13h11v-9q7-1 7-9z"),
		twin(dark, "M38 113q0-7 8-7h7v7z"),
		mover(),
	)
}

// tapping sits with one foot off the floor.
func tapping() drawing {
	return join(stool(),
		pen(blue, "M45 90q-3 0-3 5v13h11v-9q7-1 7-9z"),
		pen(blue, "M75 90q3 0 3 5v8h-11v-4q-7-1-7-9z"),
		pen(dark, "M38 113q0-7 8-7h7v7z"),
		pen(dark, "M67 108v-7h7q8 0 8 7z"),
		pen(line, "M70 113q4-3 8 0"),
		mover(),
	)
}

func armsUp() drawing {
	return join(
		twin(orange, "M48 80q-18-16-20-50q5-3 9 0q0 28 14 38z"),
		twin(skin3, "M27 31q-3-14 5-15q7 1 6 14q-5 3-11 1z"),
		pen(line, "M18 26v-12l-4 5m4-5l4 5M102 26v-12l-4 5m4-5l4 5"),
	)
}

func armsOut() drawing {
	return join(
		disc(skin3, 26, 90, 5), disc(skin3, 94, 90, 5),
		twin(orange, "M47 68q-16 6-24 18q3 5 8 5q7-9 15-12z"),
	)
}

// handsOpen shows two hands with their fingers.
func handsOpen() drawing {
	return join(
		twin(orange, "M47 72q-9 9-15 8q-4-8-5-18q-4 0-9 1q1 22 11 30q9 0 17-8z"),
		twin(skin3, "M16 62q-6-10-5-15q3-1 5 6l-1-11q3-2 5 0l1 9l2-9q3-1 4 1l-1 10l4-5q3 1 2 4q-3 9-7 12q-4 2-9-2z"),
	)
}

// nodding shows a number without hands.
func nodding() drawing {
	return join(
		disc(skin3, 36, 90, 5), disc(skin3, 84, 90, 5),
		twin(orange, "M47 68q-12 6-15 17q4 4 9 3q2-6 8-9z"),
		pen(line, "M100 34q8 10 0 20l7-2m-7 2l-1-7M20 34q-8 10 0 20l-7-2m7 2l1-7"),
	)
}
