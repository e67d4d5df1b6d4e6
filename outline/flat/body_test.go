package flat

import (
	"math"
	"testing"
	"time"

	"slingloft/outline/design"
	"slingloft/outline/hung"
)

func prototype(t *testing.T) hung.Shape {
	t.Helper()
	s, err := hung.Solve(hung.Problem{
		Bed: design.Bed{
			Span: 1440, HeadBar: 980, FootBar: 980, HeadValue: 420,
			Control: design.Thrust, ControlValue: 420,
			HeadTail: 150, FootTail: 150, HeadLeg: 820, FootLeg: 820,
			HeadRadius: 125, SeatRadius: 125, FootRadius: 125,
		},
		Load: hung.EvenLoad(70*hung.Gravity, -720, 720),
	})
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func TestPrototypeNet(t *testing.T) {
	s := prototype(t)
	for _, cell := range []float64{20, 10, 5, 2.5} {
		t0 := time.Now()
		b, err := layNet(&s, cell, false)
		if err != nil {
			t.Fatal(err)
		}
		c, e := b.Corner(hung.Foot), b.Ends[hung.Foot]
		t.Logf("cell %.1f: %v corner %v middle %v out %.2f shear %.2f° at %v; end flat %.2f hung %.2f side flat %.2f hung %.2f barcorner %v tips %.2f",
			cell, time.Since(t0), c, e.Flat[0], c.X-e.Flat[0].X, b.Shear.Angle*180/math.Pi, b.Shear.At,
			e.FlatLength(), e.HungLength(), b.Side.FlatLength(), b.Side.HungLength(), b.BarCorner(hung.Foot), b.Tips)
	}
}
