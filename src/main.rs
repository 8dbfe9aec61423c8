//! Mounts the page.
fn main() {
    leptos::mount::mount_to_body(nightbank::view::App);
}
