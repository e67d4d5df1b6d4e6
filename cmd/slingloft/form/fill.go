package form

import (
	"fmt"
	"html"
	"reflect"
	"strings"
	"text/template/parse"
)

// The page is a template as package html/template knows it, parsed by the parser of that
// package and filled in here: the package itself looks for methods by name, for which the
// linker keeps every method of the whole program, a third of its size. What is filled in
// is escaped, but for what is [raw]. A template at fault is our own mistake, and panics.

// raw is a text that stands as it is: style, script, JSON for the script.
type raw string

// filler fills in one template.
type filler struct {
	out   strings.Builder
	trees map[string]*parse.Tree
	vars  map[string]reflect.Value
}

// filled returns a document with data in it: fields of structs, keys of maps, ranges,
// conditions, named templates, eq, lt and not.
func filled(document string, data any) []byte {
	const main = "page"
	trees, err := parse.Parse(main, document, "", "", map[string]any{"eq": 0, "lt": 0, "not": 0})
	if err != nil {
		panic(err)
	}
	f := filler{trees: trees, vars: map[string]reflect.Value{"$": reflect.ValueOf(data)}}
	f.node(trees[main].Root, reflect.ValueOf(data))
	return []byte(f.out.String())
}

// node writes a node of a template about a value.
func (f *filler) node(n parse.Node, dot reflect.Value) {
	switch n := n.(type) {
	case *parse.ListNode:
		for _, one := range n.Nodes {
			f.node(one, dot)
		}
	case *parse.TextNode:
		f.out.Write(n.Text)
	case *parse.ActionNode:
		f.action(n.Pipe, dot)
	case *parse.IfNode:
		if v := f.pipe(n.Pipe, dot); !v.IsZero() && !(v.Kind() == reflect.Slice && v.Len() == 0) {
			f.node(n.List, dot)
		} else if n.ElseList != nil {
			f.node(n.ElseList, dot)
		}
	case *parse.RangeNode:
		f.each(n, dot)
	case *parse.TemplateNode:
		f.node(f.trees[n.Name].Root, f.pipe(n.Pipe, dot))
	default:
		panic("form: a template with " + n.String())
	}
}

// action keeps a value under a name, or writes it.
func (f *filler) action(p *parse.PipeNode, dot reflect.Value) {
	v := f.pipe(p, dot)
	if len(p.Decl) > 0 {
		f.vars[p.Decl[0].Ident[0]] = v
		return
	}
	if text, ok := v.Interface().(raw); ok {
		f.out.WriteString(string(text))
		return
	}
	f.out.WriteString(html.EscapeString(fmt.Sprint(v.Interface())))
}

// each writes a part once for each element.
func (f *filler) each(n *parse.RangeNode, dot reflect.Value) {
	v := f.pipe(n.Pipe, dot)
	for i := range v.Len() {
		if len(n.Pipe.Decl) == 2 {
			f.vars[n.Pipe.Decl[0].Ident[0]], f.vars[n.Pipe.Decl[1].Ident[0]] = reflect.ValueOf(i), v.Index(i)
		}
		f.node(n.List, v.Index(i))
	}
}

// pipe returns what a pipeline of one command comes to.
func (f *filler) pipe(p *parse.PipeNode, dot reflect.Value) reflect.Value {
	if len(p.Cmds) != 1 {
		panic("form: a template with several commands: " + p.String())
	}
	args := p.Cmds[0].Args
	name, isFunction := args[0].(*parse.IdentifierNode)
	if !isFunction {
		return f.value(args[0], dot)
	}
	var v []reflect.Value
	for _, a := range args[1:] {
		v = append(v, f.value(a, dot))
	}
	switch {
	case name.Ident == "not" && len(v) == 1:
		return reflect.ValueOf(v[0].IsZero())
	case name.Ident == "eq" && len(v) == 2:
		return reflect.ValueOf(v[0].Equal(v[1]))
	case name.Ident == "lt" && len(v) == 2:
		return reflect.ValueOf(v[0].Int() < v[1].Int())
	}
	panic("form: a template with " + p.String())
}

// value returns what an argument stands for.
func (f *filler) value(n parse.Node, dot reflect.Value) reflect.Value {
	switch n := n.(type) {
	case *parse.DotNode:
		return dot
	case *parse.FieldNode:
		return within(dot, n.Ident)
	case *parse.VariableNode:
		return within(f.vars[n.Ident[0]], n.Ident[1:])
	case *parse.StringNode:
		return reflect.ValueOf(n.Text)
	case *parse.NumberNode:
		return reflect.ValueOf(int(n.Int64))
	}
	panic("form: a template with the value " + n.String())
}

// within returns a field of a field and so on.
func within(v reflect.Value, names []string) reflect.Value {
	for _, name := range names {
		if v.Kind() == reflect.Interface {
			v = v.Elem()
		}
		if v.Kind() == reflect.Map {
			v = v.MapIndex(reflect.ValueOf(name))
		} else {
			v = v.FieldByName(name)
		}
		if !v.IsValid() {
			panic("form: a template asks for " + name)
		}
	}
	if v.Kind() == reflect.Interface {
		v = v.Elem()
	}
	return v
}
