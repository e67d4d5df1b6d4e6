package work

import "slingloft/outline"

// templates builds every stiff template and gauge of a plan.
func templates(p *Plan) ([]outline.Piece, error) { return nil, nil }
