// Starts the app in the page.
document.getElementById('app')!.textContent = document.title;
