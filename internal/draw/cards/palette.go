package cards

// The classes of a drawing. A theme gives each a fill (the lines a stroke);
// testdata/cards.css has values that were looked at, in light and in dark.
// Everything has the ink line around it unless it is bare or far.
const (
	skin1 = "k-skin1" // four skins, from light to dark
	skin2 = "k-skin2"
	skin3 = "k-skin3"
	skin4 = "k-skin4"

	orange = "k-a"
	blue   = "k-b"
	butter = "k-c"
	green  = "k-d"
	rose   = "k-e"
	grey   = "k-f"
	brown  = "k-g"
	white  = "k-w"
	dark   = "k-k" // boots, dark hair; the ink must not be needed on it

	sky   = "k-sky"
	sea   = "k-sea"
	earth = "k-earth"
	grass = "k-grass"
	night = "k-night"

	line  = "k-ink"       // an ink line without a fill
	faint = "k-ink k-far" // the same behind the character
	rain  = "k-rain"      // a line of rain
	dot   = "k-dot"       // filled with ink: eyes, noses, buttons
	blush = "k-blush"     // a cheek, see-through
)

// far gives a fill the paler line of what stands behind the character.
func far(class string) string { return class + " k-far" }

// bare gives a fill no line.
func bare(class string) string { return class + " k-n" }
