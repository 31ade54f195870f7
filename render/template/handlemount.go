package template

import (
	"tipline/geometry"
	"tipline/geometry/mount"
)

// MountHandles returns the handles of a drilling template, at full scale: bore, the
// collet's register and flange, and the screw circle with the first screw's place.
func MountHandles(w Wheel) []Handle {
	handles := append(boreHandle(w), colletHandles(w.Collet)...)
	if w.Mounting != nil {
		handles = append(handles, screwHandles(*w.Mounting)...)
	}
	return handles
}

// StackHandles returns the handles of a stack's template or view, at full scale: those
// of its collet and screws.
func StackHandles(st Stack) []Handle {
	return append(colletHandles(st.Collet), screwHandles(st.Stacked.Mounting)...)
}

// colletHandles stand left of the centre, one below the other, clear of the bore's.
func colletHandles(c mount.Collet) []Handle {
	var handles []Handle
	for _, part := range []struct {
		q        geometry.Quantity
		diameter float64
		degrees  float64
	}{{"mount.collet.register", c.Register, 170}, {"mount.collet.flange", c.Flange, 190}} {
		if part.diameter > 0 {
			at := geometry.Polar(part.diameter/2, geometry.Degrees(part.degrees))
			handles = append(handles, diameterHandle(part.q, at))
		}
	}
	return handles
}

// screwHandles stand on the first screw, which is dragged in or out, and on the next,
// by which all are turned where the first's angle was asked for.
func screwHandles(m mount.Mounting) []Handle {
	if len(m.Places) == 0 {
		return nil
	}
	at := m.Places[0].At
	handles := []Handle{diameterHandle("mount.screw_circle", at)}
	if m.Screws.Start == nil || len(m.Places) < 2 {
		return handles
	}
	next := m.Places[1]
	step := (next.Angle - m.Places[0].Angle).Turn()
	return append(handles, Handle{Quantity: "mount.start", At: next.At, Set: func(p geometry.Point) ([]Setting, error) {
		if !p.Finite() {
			return nil, ErrNowhere
		}
		return []Setting{{"mount.start", float64((geometry.Clock(0) - p.Direction() - step).Turn())}}, nil
	}})
}
