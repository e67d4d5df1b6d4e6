package geom

import "math"

// Point3 is a place, a displacement or a force in space: x along the hammock, y
// across, z up, in mm or N.
type Point3 struct{ X, Y, Z float64 }

// Pt3 returns the point (x, y, z).
func Pt3(x, y, z float64) Point3 { return Point3{x, y, z} }

// Plus returns p + q.
func (p Point3) Plus(q Point3) Point3 { return Point3{p.X + q.X, p.Y + q.Y, p.Z + q.Z} }

// Minus returns p − q, the displacement from q to p.
func (p Point3) Minus(q Point3) Point3 { return Point3{p.X - q.X, p.Y - q.Y, p.Z - q.Z} }

// Times returns p scaled by k.
func (p Point3) Times(k float64) Point3 {
	return Point3{float64(p.X * k), float64(p.Y * k), float64(p.Z * k)}
}

// PlusTimes returns p + k q.
func (p Point3) PlusTimes(q Point3, k float64) Point3 {
	return Point3{p.X + float64(k*q.X), p.Y + float64(k*q.Y), p.Z + float64(k*q.Z)}
}

// Dot returns the scalar product of p and q.
func (p Point3) Dot(q Point3) float64 {
	return float64(p.X*q.X) + float64(p.Y*q.Y) + float64(p.Z*q.Z)
}

// Cross returns the vector product of p and q.
func (p Point3) Cross(q Point3) Point3 {
	return Point3{
		float64(p.Y*q.Z) - float64(p.Z*q.Y),
		float64(p.Z*q.X) - float64(p.X*q.Z),
		float64(p.X*q.Y) - float64(p.Y*q.X),
	}
}

// Len returns the length of p.
func (p Point3) Len() float64 { return math.Sqrt(p.Dot(p)) }

// Unit returns p scaled to length 1; the zero point stays zero.
func (p Point3) Unit() Point3 {
	l := p.Len()
	if l == 0 {
		return Point3{}
	}
	return p.Times(1 / l)
}
