package estimate

// NearestTen rounds as schools do: ones 5 to 9 go up, 0 to 4 go down. Half
// always goes up (3.NBT.A.1 of CCSS-M 2010, from memory; not the half-to-even
// of statistics).
func NearestTen(n int) int { return (n + 5) / 10 * 10 }

// NearestHundred rounds in the same way: 50 and more go up.
func NearestHundred(n int) int { return (n + 50) / 100 * 100 }

// NearestFive is the five or ten that n is closest to; no whole number is
// halfway.
func NearestFive(n int) int { return (n + 2) / 5 * 5 }
