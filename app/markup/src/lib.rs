//! The `view!` macro of the app.
//!
//! Tags become plain calls that fill in one kind of value, `crate::reactive::View`, where the
//! framework's own macro gives each element, and each way of nesting them, a type of its own with
//! its own copy of the code that draws it. What it takes:
//!
//! - `<p class="lead" data-test=test hidden=move || ..>`: fixed and followed attributes;
//! - `prop:value=..` and `prop:checked=..`: what a field holds now;
//! - `on:click=move |event| ..`: what is called with the browser's event;
//! - `node_ref=..`: who is told the element once it is there;
//! - `"text"` and `{anything that can be shown}` between the tags;
//! - `<Part label=.. test />`: a component with its properties, its children between its tags.

use proc_macro2::TokenStream;
use quote::quote;
use rstml::node::{
    KeyedAttribute, KeyedAttributeValue, Node, NodeAttribute, NodeElement, NodeName,
};
use syn::{Error, Expr, Path, Result, Stmt};

/// Elements of a drawing; all others are those of a page.
const DRAWN: [&str; 9] = [
    "svg",
    "path",
    "g",
    "rect",
    "defs",
    "clipPath",
    "linearGradient",
    "stop",
    "pattern",
];

/// A view, written as tags.
#[proc_macro]
pub fn view(tags: proc_macro::TokenStream) -> proc_macro::TokenStream {
    let view = rstml::parse(tags).and_then(|nodes| several(&nodes));
    view.unwrap_or_else(Error::into_compile_error).into()
}

/// Views one after the other, as one.
fn several(nodes: &[Node]) -> Result<TokenStream> {
    if let [node] = nodes {
        let view = one(node)?;
        return Ok(quote! { crate::reactive::IntoView::into_view(#view) });
    }
    let children = nodes.iter().map(one).collect::<Result<Vec<_>>>()?;
    Ok(quote! { crate::reactive::View::several() #(.child(#children))* })
}

/// Something that can be shown.
fn one(node: &Node) -> Result<TokenStream> {
    match node {
        Node::Element(it) => match component(it.name()) {
            Some(path) => part(path, it),
            None => element(it),
        },
        Node::Text(text) => {
            let text = &text.value;
            Ok(quote! { #text })
        }
        Node::Block(block) => {
            let block = block
                .try_block()
                .ok_or_else(|| Error::new_spanned(block, "this is no expression"))?;
            // Braces round a single expression belong to the tags, not to the code.
            Ok(match block.stmts.as_slice() {
                [Stmt::Expr(value, None)] => quote! { #value },
                _ => quote! { #block },
            })
        }
        Node::Fragment(it) => several(&it.children),
        other => Err(Error::new_spanned(
            other,
            "tags, \"text\" and {blocks} only",
        )),
    }
}

/// The path of a component; elements are written small.
fn component(name: &NodeName) -> Option<&Path> {
    let NodeName::Path(path) = name else {
        return None;
    };
    let last = path.path.segments.last()?.ident.to_string();
    last.starts_with(char::is_uppercase).then_some(&path.path)
}

fn keyed(attribute: &NodeAttribute) -> Result<&KeyedAttribute> {
    match attribute {
        NodeAttribute::Attribute(keyed) => Ok(keyed),
        NodeAttribute::Block(block) => Err(Error::new_spanned(block, "an attribute has a name")),
    }
}

fn value(attribute: &KeyedAttribute) -> Result<Option<&Expr>> {
    match &attribute.possible_value {
        KeyedAttributeValue::None => Ok(None),
        KeyedAttributeValue::Value(_) => match attribute.value() {
            Some(value) => Ok(Some(value)),
            None => Err(Error::new_spanned(attribute, "this is no expression")),
        },
        KeyedAttributeValue::Binding(_) => Err(Error::new_spanned(
            attribute,
            "an attribute takes one value",
        )),
    }
}

fn element(element: &NodeElement<rstml::Infallible>) -> Result<TokenStream> {
    let tag = element.name().to_string();
    let mut fixed = Vec::new();
    let mut followed = Vec::new();
    for attribute in element.attributes() {
        let attribute = keyed(attribute)?;
        let name = attribute.key.to_string();
        let literal = match value(attribute)? {
            None => Some(String::new()),
            Some(_) => attribute.value_literal_string(),
        };
        match (literal, value(attribute)?) {
            (Some(literal), _) => fixed.push(quote! { (#name, #literal) }),
            (None, Some(value)) => followed.push(follow(&name, value)),
            (None, None) => {}
        }
    }
    let children = element
        .children
        .iter()
        .map(one)
        .collect::<Result<Vec<_>>>()?;
    let new = if DRAWN.contains(&tag.as_str()) {
        quote! { crate::reactive::View::drawn }
    } else {
        quote! { crate::reactive::View::element }
    };
    // Children come before the attributes that are followed: what a list holds must be there
    // before one of it can be picked.
    Ok(quote! { #new(#tag, &[#(#fixed),*]) #(.child(#children))* #(#followed)* })
}

fn follow(name: &str, value: &Expr) -> TokenStream {
    match name.split_once(':') {
        Some(("on", event)) => quote! { .on(#event, #value) },
        Some(("prop", property)) => quote! { .prop(#property, #value) },
        _ if name == "node_ref" => quote! { .node_ref(#value) },
        _ => quote! { .attr(#name, #value) },
    }
}

fn part(path: &Path, element: &NodeElement<rstml::Infallible>) -> Result<TokenStream> {
    let mut properties = Vec::new();
    for attribute in element.attributes() {
        let attribute = keyed(attribute)?;
        let NodeName::Path(name) = &attribute.key else {
            return Err(Error::new_spanned(&attribute.key, "a property is one word"));
        };
        let name = &name.path;
        properties.push(match value(attribute)? {
            Some(value) => quote! { .#name(#value) },
            None => quote! { .#name(#name) },
        });
    }
    if !element.children.is_empty() {
        let children = several(&element.children)?;
        properties.push(quote! {
            .children(crate::reactive::ToChildren::to_children(move || #children))
        });
    }
    Ok(quote! {
        leptos::component::component_view(#path, leptos::component::component_props_builder(&#path) #(#properties)*.build())
    })
}
