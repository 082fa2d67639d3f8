package cards

import "homebuild/internal/draw/canvas"

// drawing is what to draw, back to front.
type drawing []func(*canvas.Canvas)

func (d drawing) on(c *canvas.Canvas) {
	for _, shape := range d {
		shape(c)
	}
}

// join lays drawings over each other, the last in front.
func join(parts ...drawing) drawing {
	var all drawing
	for _, p := range parts {
		all = append(all, p...)
	}
	return all
}

// pen draws the outline that path data tells; see trace.
func pen(class, data string) drawing {
	return drawing{func(c *canvas.Canvas) { c.Path(trace(data, false), class) }}
}

// twin draws an outline on the left of a character and again, as in a mirror,
// on its right.
func twin(class, data string) drawing {
	return join(pen(class, data), drawing{func(c *canvas.Canvas) { c.Path(trace(data, true), class) }})
}

func disc(class string, x, y, r int) drawing {
	return drawing{func(c *canvas.Canvas) { c.Circle(x, y, r, class) }}
}

func oval(class string, x, y, rx, ry int) drawing {
	return drawing{func(c *canvas.Canvas) { c.Ellipse(x, y, rx, ry, class) }}
}

// slab is a rectangle with corners of radius r.
func slab(class string, x, y, w, h, r int) drawing {
	return drawing{func(c *canvas.Canvas) {
		if r == 0 {
			c.Rect(x, y, w, h, class)
			return
		}
		c.RoundRect(x, y, w, h, r, class)
	}}
}

// eyes are dx to the left and right of x.
func eyes(x, y, dx int) drawing {
	return join(disc(dot, x-dx, y, 3), disc(dot, x+dx, y, 3))
}

// face is the face of everybody: two eyes, a smile and warm cheeks.
func face(x, y, dx int) drawing {
	return join(
		oval(blush, x-dx-3, y+7, 4, 3),
		oval(blush, x+dx+3, y+7, 4, 3),
		eyes(x, y, dx),
		drawing{func(c *canvas.Canvas) {
			c.Path(new(canvas.Path).Move(x-5, y+8).Bend(5, 5, 10, 0), line)
		}},
	)
}

// adult is a grown person without hair and face, whose head is around 60, 36.
func adult(skin, coat, trousers string) drawing {
	return join(
		pen(trousers, "M46 94v14h12v-10h4v10h12v-14z"),
		twin(dark, "M42 113q0-7 8-7h8v7z"), // boots
		disc(skin, 33, 87, 5), disc(skin, 87, 87, 5),
		twin(coat, "M46 62q-14 8-17 22q4 4 9 3q3-8 9-12z"), // arms
		pen(coat, "M60 57q-14 0-16 14l-3 28q19 6 38 0l-3-28q-2-14-16-14z"),
		disc(skin, 39, 38, 4), disc(skin, 81, 38, 4),
		disc(skin, 60, 36, 21),
	)
}

// child is a child without hair and face, whose head is around 60, 50.
func child(skin, coat, trousers string) drawing {
	return join(
		pen(trousers, "M47 98v10h11v-6h4v6h11v-10z"),
		twin(dark, "M43 113q0-7 8-7h7v7z"), // boots
		disc(skin, 35, 94, 5), disc(skin, 85, 94, 5),
		twin(coat, "M47 74q-12 6-15 17q4 4 9 3q2-6 8-9z"), // arms
		pen(coat, "M60 70q-13 0-15 10l-2 21q17 5 34 0l-2-21q-2-10-15-10z"),
		disc(skin, 37, 52, 4), disc(skin, 83, 52, 4),
		disc(skin, 60, 50, 23),
	)
}

// level is a floor across a setting; its lower edges are out of sight.
const level = "M-4 114h248v40h-248z"

// backdrop fills a setting.
func backdrop(class string) drawing {
	return slab(bare(class), 0, 0, settingWidth, settingHeight, 0)
}

// cloud is a cloud far away whose lower left is at x, y.
func cloud(x, y int) drawing {
	return drawing{func(c *canvas.Canvas) {
		p := new(canvas.Path).Move(x, y).Bend(-10, -2, -8, -10).Bend(4, -8, 12, -5).Bend(4, -9, 14, -7)
		c.Path(p.Bend(9, 2, 10, 9).Bend(10, -2, 12, 6).Bend(0, 7, -8, 7).Close(), far(white))
	}}
}
