//! Starts the app in the page.

use app::platform::worker;
use leptos::prelude::*;
use leptos::task::spawn_local;

fn main() {
    console_error_panic_hook::set_once();
    mount_to_body(page);
}

fn page() -> impl IntoView {
    let trouble = RwSignal::new(None);
    let is_update_ready = RwSignal::new(false);
    worker::watch_updates(move || is_update_ready.set(true));
    spawn_local(async move { trouble.set(worker::start().await.err()) });
    let apply =
        move |_| spawn_local(async move { trouble.set(worker::apply_update().await.err()) });
    view! {
        <main>
            <h1>"Duskpot"</h1>
            <Show when=move || is_update_ready.get()>
                <p role="status">
                    "A new version is ready. "
                    <button data-test="update" on:click=apply>"Use it now"</button>
                </p>
            </Show>
            <p>{move || trouble.get().map(|trouble| trouble.to_string())}</p>
        </main>
    }
}
