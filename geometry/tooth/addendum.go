package tooth

import "math"

// addendumFactor returns f, the theoretical addendum of a wheel of that many
// teeth, in modules: the height above the pitch circle at which the epicycloid
// that starts at the tooth's flank meets the tooth's centre line. The circle that
// rolls on the pitch circle is half the pinion's pitch diameter across, and the
// tooth is half the pitch wide. A ratio need make no whole wheel, so that neither
// number need be whole. From Goodrich, The Modern Clock (1905), ch. XIV, and
// Beckett, Clocks, Watches and Bells (8th ed. 1903), p. 276.
func addendumFactor(count, leaves float64) float64 {
	return height(count/2, leaves/4, rolledToTip(count, leaves))
}

// rolledToTip returns how far the rolling circle has turned against the line of
// centres when the epicycloid meets the tooth's centre line, to the last digit.
func rolledToTip(count, leaves float64) float64 {
	pitch, rolling := count/2, leaves/4
	half := math.Pi / (2 * count) // from the flank to the centre line
	// At π the curve is at its highest and has gone leaves times half round: the
	// centre line is met before.
	low, high := 0.0, math.Pi
	for {
		rolled := low + (high-low)/2
		if rolled <= low || rolled >= high {
			return rolled
		}
		if round(pitch, rolling, rolled) < half {
			low = rolled
		} else {
			high = rolled
		}
	}
}

// round returns the angle about the wheel's centre from the start of the
// epicycloid to its point when the rolling circle has turned by rolled against
// the line of centres; it grows with rolled.
func round(pitch, rolling, rolled float64) float64 {
	sin, cos := math.Sincos(rolled)
	return rolled*rolling/pitch - math.Atan2(rolling*sin, pitch+rolling-rolling*cos)
}

// height returns how far that point stands above the pitch circle. It is
// √(pitch² + d) − pitch, written so that a small height loses no digits.
func height(pitch, rolling, rolled float64) float64 {
	sin := math.Sin(rolled / 2)
	d := 4 * rolling * (pitch + rolling) * sin * sin
	return d / (math.Sqrt(pitch*pitch+d) + pitch)
}
