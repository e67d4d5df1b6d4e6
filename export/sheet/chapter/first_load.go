package chapter

import (
	"slingloft/export/sheet"
	"slingloft/outline/accuracy"
	"slingloft/outline/design"
)

// stepsPull takes the first load's stretch out of cords whose nodes are marked, before
// they are: no step where it is cut off or left.
func (b build) stepsPull() sheet.Steps {
	a, say := b.Design.Accuracy, b.Say.Order
	if a.FirstLoad != design.PullSet || a.NodesRead {
		return nil
	}
	s := step(say.Pull)
	s.Add(say.PullOf, b.Style.Force(accuracy.Pull(b.Shape)))
	return sheet.Steps{s}
}

// stepsRead sets the spliced chain and reads its nodes, where the maker does so.
func (b build) stepsRead() sheet.Steps {
	a, say := b.Design.Accuracy, b.Say.Order
	if !a.NodesRead {
		return nil
	}
	if a.FirstLoad != design.PullSet {
		return sheet.Steps{step(say.Read)}
	}
	s := step(say.PullRead)
	s.Add(say.PullOf, b.Style.Force(accuracy.Pull(b.Shape)))
	return sheet.Steps{s}
}
